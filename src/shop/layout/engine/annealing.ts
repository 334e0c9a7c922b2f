import type { SearchRandom } from './search-random.ts';
import type { AnnealingSettings } from './settings.ts';

/**
 * Annealing in rounds (Kirkpatrick, Gelatt and Vecchi 1983): each cools from warm to cold, and the next, twice as long,
 * begins warm again. What stands still under late acceptance comes loose.
 */
export class Annealing {
  private readonly settings: AnnealingSettings;
  private readonly warm: number;
  private readonly fall: number;
  private turn = 0;
  private turns: number;

  /** `unit`: the measure by which temperatures are reckoned, the mean area of a piece. */
  constructor(unit: number, settings: AnnealingSettings) {
    this.settings = settings;
    this.warm = settings.warm * unit;
    this.fall = Math.log(settings.cold / settings.warm);
    this.turns = settings.turns;
  }

  restart(): void {
    this.turn = 0;
    this.turns = this.settings.turns;
  }

  /** How much worse than the current layout this turn may be. */
  slack(random: SearchRandom): number {
    if (this.turn >= this.turns) {
      this.turn = 0;
      this.turns = Math.min(2 * this.turns, this.settings.mostTurns);
    }
    const temperature = this.warm * Math.exp((this.fall * this.turn) / this.turns);
    this.turn++;
    return -temperature * Math.log(1 - random.next());
  }
}

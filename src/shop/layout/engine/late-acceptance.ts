/** Late acceptance: a turn is kept unless it is worse than the layout some turns ago. Quick to come down, quick to stand still. */
export class LateAcceptance {
  private readonly memory: Float64Array;
  private at = 0;

  constructor(turns: number) {
    this.memory = new Float64Array(turns);
  }

  restart(measure: number): void {
    this.memory.fill(measure);
  }

  /** The measure of the layout so many turns ago. */
  get threshold(): number {
    return this.memory[this.at] as number;
  }

  remember(current: number): void {
    if (current < (this.memory[this.at] as number)) this.memory[this.at] = current;
    this.at = (this.at + 1) % this.memory.length;
  }
}

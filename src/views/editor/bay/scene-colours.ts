/** Colours of the scene that are not materials: they follow the theme of the page. */
export interface SceneColours {
  readonly vehicleLine: string;
  readonly vehicleFaint: string;
  readonly wall: string;
  readonly wallShare: number;
  readonly floor: string;
  readonly obstacle: string;
  readonly obstacleShare: number;
  readonly closure: string;
  readonly closureShare: number;
  readonly ink: string;
  readonly inkShare: number;
  readonly petrol: string;
  readonly zone: string;
  readonly skyLight: string;
  readonly groundLight: string;
  readonly ambient: number;
  readonly sun: number;
  readonly contact: number;
  readonly severity: Readonly<Record<'stop' | 'caution' | 'note', string>>;
}

const LIGHT: SceneColours = {
  vehicleLine: '#8f8772',
  vehicleFaint: '#b3a98f',
  wall: '#cfc6b2',
  wallShare: 0.42,
  floor: '#c3b9a4',
  obstacle: '#a49c8a',
  obstacleShare: 0.6,
  closure: '#c9c2b3',
  closureShare: 0.5,
  ink: '#2a2216',
  inkShare: 0.62,
  petrol: '#0d5c63',
  zone: '#9a5b00',
  skyLight: '#fffdf6',
  groundLight: '#b9a88a',
  ambient: 2.15,
  sun: 1.35,
  contact: 0.34,
  severity: { stop: '#a8261b', caution: '#9a5b00', note: '#48606f' },
};

const DARK: SceneColours = {
  vehicleLine: '#5b646b',
  vehicleFaint: '#40484e',
  wall: '#2a2f34',
  wallShare: 0.5,
  floor: '#2f3336',
  obstacle: '#4a5157',
  obstacleShare: 0.6,
  closure: '#3a4147',
  closureShare: 0.5,
  ink: '#0a0806',
  inkShare: 0.7,
  petrol: '#63b7b5',
  zone: '#e7ad55',
  skyLight: '#eef3f6',
  groundLight: '#6d6455',
  ambient: 1.45,
  sun: 1.3,
  contact: 0.6,
  severity: { stop: '#ff8577', caution: '#e7ad55', note: '#9db3c1' },
};

export const sceneColours = (theme: 'light' | 'dark'): SceneColours => (theme === 'dark' ? DARK : LIGHT);

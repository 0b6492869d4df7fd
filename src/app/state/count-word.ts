// biome-ignore lint/performance/noBarrelFile: things are counted by the core, so that pages say it as the window does
export { countWord } from '../../family/count-word.ts';

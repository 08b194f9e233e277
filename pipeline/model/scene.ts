/** An episode and a scene in it. */
export interface Scene {
  readonly episode: number;
  readonly scene: number;
}

/** Reads "2/14", whose form the schema has checked. */
export function sceneOf(text: string): Scene {
  const [episode = '0', scene = '0'] = text.split('/');
  return { episode: Number(episode), scene: Number(scene) };
}

/** Below 0 if `a` comes before `b` in the story, 0 if they are the same scene. */
export function compareScenes(a: Scene, b: Scene): number {
  return a.episode - b.episode || a.scene - b.scene;
}

/** Whether `scene` lies in the run of scenes, both ends included. */
export function sceneWithin(scene: Scene, from: Scene, to: Scene): boolean {
  return compareScenes(from, scene) <= 0 && compareScenes(scene, to) <= 0;
}

/** The sounds of the cap page and of the trays. They differ in pitch, length and number, so that none rests on hearing one quality. */
export type CueKind = "countIn" | "capOff" | "tick" | "fifth" | "end" | "rock" | "lift" | "change";

interface Tone {
  readonly afterS: number;
  readonly forS: number;
  readonly hertz: number;
  readonly loudness: number;
}

const tones: Readonly<Record<CueKind, readonly Tone[]>> = {
  countIn: [{ afterS: 0, forS: 0.11, hertz: 587, loudness: 0.5 }],
  capOff: [{ afterS: 0, forS: 0.32, hertz: 880, loudness: 0.7 }],
  tick: [{ afterS: 0, forS: 0.035, hertz: 1175, loudness: 0.5 }],
  fifth: [{ afterS: 0, forS: 0.09, hertz: 1568, loudness: 0.7 }],
  end: [
    { afterS: 0, forS: 0.16, hertz: 784, loudness: 0.8 },
    { afterS: 0.22, forS: 0.16, hertz: 784, loudness: 0.8 },
    { afterS: 0.44, forS: 0.4, hertz: 523, loudness: 0.8 },
  ],
  rock: [{ afterS: 0, forS: 0.07, hertz: 392, loudness: 0.6 }],
  // Up, as the hand goes.
  lift: [
    { afterS: 0, forS: 0.16, hertz: 587, loudness: 0.8 },
    { afterS: 0.24, forS: 0.22, hertz: 988, loudness: 0.8 },
  ],
  change: [0, 0.2, 0.4, 0.6].map((afterS) => ({ afterS, forS: 0.11, hertz: 880, loudness: 0.8 })),
};

/** Two milliseconds: too short to hear as a delay, long enough not to click. */
const edgeS = 0.002;

/**
 * Sets one cue on an audio clock, to begin at `atS` of that clock.
 *
 * @returns how to take it back before it sounds
 */
export function setCue({
  context,
  out,
  kind,
  atS,
}: {
  readonly context: BaseAudioContext;
  readonly out: AudioNode;
  readonly kind: CueKind;
  readonly atS: number;
}): () => void {
  const made: { readonly source: OscillatorNode; readonly gain: GainNode }[] = [];
  for (const tone of tones[kind]) {
    const beginS = atS + tone.afterS;
    const endS = beginS + tone.forS;
    const gain = context.createGain();
    gain.gain.setValueAtTime(0, beginS);
    gain.gain.linearRampToValueAtTime(tone.loudness, beginS + edgeS);
    gain.gain.setValueAtTime(tone.loudness, endS - 2 * edgeS);
    gain.gain.linearRampToValueAtTime(0, endS);
    const source = context.createOscillator();
    source.frequency.setValueAtTime(tone.hertz, beginS);
    source.connect(gain).connect(out);
    source.start(beginS);
    source.stop(endS + edgeS);
    made.push({ source, gain });
  }
  return () => {
    for (const { source, gain } of made) {
      gain.disconnect();
      source.disconnect();
    }
  };
}

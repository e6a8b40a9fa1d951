package crowdline.speech.hear;

import crowdline.speech.hear.Hearing.NotSpeech;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks back at sound in which something was loud, when the silence after it is known too, and finds its edges. The
 * noise is taken to change evenly from what it was before to what it is at the end.
 */
final class EdgeSearch {
    /** An edge lies no further from loud sound, frames (Rabiner and Sambur 1975, from memory). */
    static final int FURTHEST = 25;
    /** A stop consonant is silent for no longer before it bursts, frames (Lamel and others 1981, from memory). */
    static final int STOP_GAP = 15;
    /** The least loud sound of a syllable, frames. Tuned: "up" takes a tenth of a second, a click or knock less. */
    static final int SYLLABLE = 8;

    /** Shorter is a cough and no remark, frames. Tuned. */
    private static final int SHORTEST = 60;
    /** A first sound shorter than this and set apart is the throat being cleared, frames. Tuned. */
    private static final int THROAT = 45;

    private static final int THROAT_APART = 60;
    /** The silence at the end that the noise is taken from, frames. */
    private static final int TAIL = SpeechEdges.HOLD - FURTHEST - STOP_GAP;
    /** Syllables come two to eight a second: levels are smoothed over less and taken against more, frames. */
    private static final int QUICK = 3;

    private static final int SLOW = 50;
    /** Speech wavers more than this at any noise it stands clearly over, noise and tones less; decibels. Tuned. */
    private static final double STEADY_DB = 1.5;
    /** Levels that may miss the lower threshold on the way to an edge. Tuned. */
    private static final int DROPOUT = 2;

    private final List<SoundLevel> levels;
    private final NoiseFloor voiceBefore;
    private final NoiseFloor hissBefore;
    private final NoiseFloor voiceAfter;
    private final NoiseFloor hissAfter;
    private final List<Pulse> pulses;

    /** Sound of at least a syllable, from its first loud level to its last. */
    private record Pulse(int first, int last) {
        int length() {
            return last - first + 1;
        }
    }

    /** @param levels with silence before, and {@link SpeechEdges#HOLD} of it after what was loud */
    EdgeSearch(List<SoundLevel> levels, NoiseFloor voiceBefore, NoiseFloor hissBefore) {
        this.levels = levels;
        this.voiceBefore = voiceBefore;
        this.hissBefore = hissBefore;
        NoiseFloor voice = NoiseFloor.UNKNOWN;
        NoiseFloor hiss = NoiseFloor.UNKNOWN;
        for (SoundLevel level : levels.subList(Math.max(0, levels.size() - TAIL), levels.size())) {
            voice = voice.learn(level.voiceDb());
            hiss = hiss.learn(level.hissDb());
        }
        voiceAfter = voice;
        hissAfter = hiss;
        pulses = withoutThroat(pulses());
    }

    /** Why this is no speech, or null if it is. */
    @Nullable
    NotSpeech notSpeech() {
        if (pulses.isEmpty()
                || pulses.get(pulses.size() - 1).last() - pulses.get(0).first() < SHORTEST) {
            return NotSpeech.SHORT;
        }
        return waverDb() < STEADY_DB ? NotSpeech.STEADY : null;
    }

    /** Index of the first level of what was said. */
    int first() {
        return edge(pulses.get(0).first(), -1);
    }

    /** Index of the last. */
    int last() {
        return edge(pulses.get(pulses.size() - 1).last(), 1);
    }

    private int edge(int from, int step) {
        int edge = from;
        int missed = 0;
        for (int i = 1; i <= FURTHEST && missed <= DROPOUT; i++) {
            int at = from + i * step;
            if (at < 0 || at >= levels.size()) {
                break;
            }
            SoundLevel level = levels.get(at);
            if (voice(at).isBarelyUnder(level.voiceDb()) || hiss(at).isBarelyUnder(level.hissDb())) {
                edge = at;
                missed = 0;
            } else {
                missed++;
            }
        }
        return edge;
    }

    private List<Pulse> pulses() {
        List<Pulse> found = new ArrayList<>();
        int first = -1;
        int last = -1;
        int loud = 0;
        for (int i = 0; i < levels.size(); i++) {
            SoundLevel level = levels.get(i);
            if (voice(i).isClearlyUnder(level.voiceDb()) || hiss(i).isClearlyUnder(level.hissDb())) {
                first = loud == 0 ? i : first;
                last = i;
                loud++;
            } else if (loud > 0 && i - last > STOP_GAP) {
                if (loud >= SYLLABLE) {
                    found.add(new Pulse(first, last));
                }
                loud = 0;
            }
        }
        return found;
    }

    private static List<Pulse> withoutThroat(List<Pulse> pulses) {
        boolean throat = pulses.size() > 1
                && pulses.get(0).length() < THROAT
                && pulses.get(1).first() - pulses.get(0).last() > THROAT_APART;
        return throat ? pulses.subList(1, pulses.size()) : pulses;
    }

    /** How much the level wavers as syllables do, within pulses, in the band where it wavers more. */
    private double waverDb() {
        return Math.max(
                waverDb(levels.stream().mapToDouble(SoundLevel::voiceDb).toArray()),
                waverDb(levels.stream().mapToDouble(SoundLevel::hissDb).toArray()));
    }

    private double waverDb(double[] db) {
        double[] sums = new double[db.length + 1];
        for (int i = 0; i < db.length; i++) {
            sums[i + 1] = sums[i] + db[i];
        }
        double squares = 0;
        int count = 0;
        for (Pulse pulse : pulses) {
            for (int i = pulse.first(); i <= pulse.last(); i++) {
                double off = mean(sums, i, QUICK, pulse) - mean(sums, i, SLOW, pulse);
                squares += off * off;
                count++;
            }
        }
        return Math.sqrt(squares / count);
    }

    /** Around a place, but never beyond its pulse: its edges are steep whatever it is. */
    private static double mean(double[] sums, int at, int over, Pulse pulse) {
        int from = Math.max(pulse.first(), at - over / 2);
        int to = Math.min(pulse.last(), at + over / 2) + 1;
        return (sums[to] - sums[from]) / (to - from);
    }

    private NoiseFloor voice(int at) {
        return voiceBefore.towards(voiceAfter, (double) at / levels.size());
    }

    private NoiseFloor hiss(int at) {
        return hissBefore.towards(hissAfter, (double) at / levels.size());
    }
}

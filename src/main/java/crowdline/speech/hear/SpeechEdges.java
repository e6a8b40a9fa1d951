package crowdline.speech.hear;

import crowdline.speech.hear.Hearing.NotSpeech;
import crowdline.speech.hear.Hearing.State;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds where speech begins and ends in levels of sound, over noise that is learned and followed. It keeps levels of the
 * last minute at most and never the sound. Time is counted in levels. Not thread-safe.
 *
 * <p>After L. R. Rabiner and M. R. Sambur, An algorithm for determining the endpoints of isolated utterances, Bell System
 * Technical Journal 54(2), 1975 (from memory): the noise is learned from its beginning, a higher threshold finds speech
 * and a lower one its edges, looked for no further than 250 ms away. Changed: their count of zero crossings, which finds
 * s and f at the edges, is a level in the band of these sounds here, as engine noise crosses zero anyhow; the noise goes
 * on being learned between remarks and, by the quietest moments, within them (as R. Martin, Noise power spectral density
 * estimation based on optimal smoothing and minimum statistics, 2001, from memory); pulses shorter than a syllable are
 * left out and gaps of stop consonants bridged (as L. F. Lamel and others, An improved endpoint detector for isolated
 * word recognition, 1981, from memory); sound without the waver of syllables is no speech.
 *
 * <p>The level alone cannot tell who speaks: another voice as loud as the speaker's counts as the speaker's.
 */
public final class SpeechEdges {
    /**
     * So long a silence ends a remark, frames. Tuned: readers pause 734 ms at a full stop (80 readers, Brigham Young
     * University thesis etd-11313), twice that is rare, and nobody likes to wait longer.
     */
    static final int HOLD = 150;
    /** The noise is learned for so long before anything counts, frames. Tuned. */
    private static final int LEARNING = 50;
    /** Sound before the first loud level that is kept to look for the edge in, frames. */
    private static final int BEFORE = EdgeSearch.FURTHEST + 5;
    /** So long a silence ends what does not count, frames. Tuned. */
    private static final int DIED_AWAY = 50;
    /** Longer is no remark, frames. */
    private static final int ENDLESS = 6000;
    /** From this on, samples are cut off. */
    private static final double OVERDRIVEN = 0.985;

    private static final int TOO_LOUD = 100;
    /** Less than this under the noise is not yet quieter noise, decibels. Tuned. */
    private static final double FALLEN_DB = 3;

    private final List<SoundLevel> kept = new ArrayList<>();
    private final QuietestMoments voiceQuietest = new QuietestMoments();
    private final QuietestMoments hissQuietest = new QuietestMoments();
    private NoiseFloor voice = NoiseFloor.UNKNOWN;
    private NoiseFloor hiss = NoiseFloor.UNKNOWN;
    private NoiseFloor voiceBefore = NoiseFloor.UNKNOWN;
    private NoiseFloor hissBefore = NoiseFloor.UNKNOWN;
    private long frames;
    private long lastOverdriven = Long.MIN_VALUE / 2;
    private boolean anySound;
    private boolean speaking;
    private boolean ignoring;
    private int loud;
    private int silent;
    private int silentSinceSpeech;

    /** Takes the level of the next hundredth of a second. */
    public Hearing hear(SoundLevel level) {
        frames++;
        anySound |= level.peak() > 0;
        lastOverdriven = level.peak() >= OVERDRIVEN ? frames : lastOverdriven;
        kept.add(level);
        follow(level);
        boolean clear =
                frames > LEARNING && (voice.isClearlyUnder(level.voiceDb()) || hiss.isClearlyUnder(level.hissDb()));
        count(clear);
        Verdict verdict = Verdict.NONE;
        if (speaking) {
            verdict = go(clear);
        } else {
            wait(clear);
        }
        double over = Math.max(voice.overDb(level.voiceDb()), hiss.overDb(level.hissDb()));
        return new Hearing(
                state(),
                Math.max(0, over),
                frames - lastOverdriven < TOO_LOUD,
                speaking ? (kept.size() - BEFORE - silentSinceSpeech) * SoundLevel.FRAME_S : 0,
                verdict.utterance,
                verdict.notSpeech);
    }

    /** What is being said now does not count, until it has died away. */
    public void forget() {
        if (speaking || loud > 0) {
            ignoring = true;
            speaking = false;
            silent = 0;
        }
    }

    private record Verdict(
            @Nullable Utterance utterance, @Nullable NotSpeech notSpeech) {
        static final Verdict NONE = new Verdict(null, null);
    }

    private State state() {
        if (!anySound) {
            return State.DEAD;
        }
        if (frames <= LEARNING) {
            return State.LEARNING;
        }
        if (ignoring) {
            return State.IGNORING;
        }
        if (speaking) {
            return silentSinceSpeech > EdgeSearch.STOP_GAP ? State.PAUSE : State.SPEECH;
        }
        return State.QUIET;
    }

    private void follow(SoundLevel level) {
        double voiceLeast = voiceQuietest.next(level.voiceDb());
        double hissLeast = hissQuietest.next(level.hissDb());
        if (frames <= LEARNING || (!speaking && !voice.isClearlyUnder(level.voiceDb()))) {
            voice = voice.learn(level.voiceDb());
        }
        if (frames <= LEARNING || (!speaking && !hiss.isClearlyUnder(level.hissDb()))) {
            hiss = hiss.learn(level.hissDb());
        }
        voice = followed(voice, voiceQuietest.nowDb(), voiceLeast);
        hiss = followed(hiss, hissQuietest.nowDb(), hissLeast);
    }

    /** Noise is never louder than now, and never quieter than the quietest moment of some seconds. */
    private static NoiseFloor followed(NoiseFloor noise, double nowDb, double leastDb) {
        if (nowDb < noise.meanDb() - FALLEN_DB) {
            return noise.at(nowDb);
        }
        return leastDb > noise.meanDb() ? noise.at(leastDb) : noise;
    }

    /** Counts the loud levels of a pulse, gaps of stop consonants left out, and the silence after them. */
    private void count(boolean clear) {
        silent = clear ? 0 : silent + 1;
        if (clear) {
            loud++;
        } else if (silent > EdgeSearch.STOP_GAP) {
            loud = 0;
        }
    }

    private void wait(boolean clear) {
        if (ignoring) {
            ignoring = silent < DIED_AWAY;
            loud = 0;
        }
        if (!ignoring && clear && loud == EdgeSearch.SYLLABLE) {
            speaking = true;
            silentSinceSpeech = 0;
        } else if (loud == 0) {
            while (kept.size() > BEFORE) {
                kept.remove(0);
            }
            voiceBefore = voice;
            hissBefore = hiss;
        }
    }

    private Verdict go(boolean clear) {
        silentSinceSpeech = clear && loud >= EdgeSearch.SYLLABLE ? 0 : silentSinceSpeech + 1;
        if (kept.size() > ENDLESS) {
            forget();
            return done(new Verdict(null, NotSpeech.ENDLESS));
        }
        if (silentSinceSpeech < HOLD) {
            return Verdict.NONE;
        }
        EdgeSearch search = new EdgeSearch(kept, voiceBefore, hissBefore);
        long firstFrame = frames - kept.size();
        NotSpeech not = search.notSpeech();
        Verdict verdict = not != null
                ? new Verdict(null, not)
                : new Verdict(
                        new Utterance(
                                (firstFrame + search.first()) * SoundLevel.FRAME_S,
                                (firstFrame + search.last() + 1) * SoundLevel.FRAME_S),
                        null);
        return done(verdict);
    }

    private Verdict done(Verdict verdict) {
        speaking = false;
        loud = 0;
        kept.subList(0, Math.max(0, kept.size() - BEFORE)).clear();
        return verdict;
    }
}

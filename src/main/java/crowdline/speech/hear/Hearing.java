package crowdline.speech.hear;

import org.jspecify.annotations.Nullable;

/**
 * What is heard at one moment.
 *
 * @param state what is going on
 * @param overNoiseDb how far the sound stands over the noise, decibels; at least 0
 * @param tooLoud whether the microphone was overdriven within the last second
 * @param soFarS how long speech has gone on up to its last sound, seconds; 0 outside speech
 * @param utterance what was found to be over just now, or null
 * @param notSpeech what was heard just now and is no speech, or null
 */
public record Hearing(
        State state,
        double overNoiseDb,
        boolean tooLoud,
        double soFarS,
        @Nullable Utterance utterance,
        @Nullable NotSpeech notSpeech) {

    /** What is going on. */
    public enum State {
        /** Nothing but zeros has come so far: switched off, or not allowed. */
        DEAD,
        /** The noise is being learned. */
        LEARNING,
        /** Noise alone. */
        QUIET,
        /** Speech. */
        SPEECH,
        /** A pause in which speech may go on. */
        PAUSE,
        /** Sound that does not count is dying away. */
        IGNORING
    }

    /** Why something was no speech. */
    public enum NotSpeech {
        /** A knock, a cough. */
        SHORT,
        /** An engine, a tone. */
        STEADY,
        /** It went on for longer than any remark. */
        ENDLESS
    }
}

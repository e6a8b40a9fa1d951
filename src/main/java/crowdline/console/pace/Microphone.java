package crowdline.console.pace;

import crowdline.speech.hear.Hearing;
import java.util.List;

/** The microphone, as far as the timing of a speaker needs it; on the event thread, at once. Nothing is recorded. */
public interface Microphone {
    /** There is none. */
    Microphone NONE = listener -> {
        listener.lost("There is no microphone.");
        return Listening.NONE;
    };

    /** Told on the event thread of what is heard. */
    interface Listener {
        /** What was heard since the last time, in order; not empty. */
        void hears(List<Hearing> hearings);

        /** Nothing more will be heard, for this reason: a sentence for the speaker. */
        void lost(String why);
    }

    /** A microphone being listened to. */
    interface Listening {
        /** Nothing is being listened to. */
        Listening NONE = new Listening() {
            @Override
            public void forget() {}

            @Override
            public void close() {}
        };

        /** What is being said now does not count. */
        void forget();

        /** Lets the microphone go; the listener is told nothing more. May be called again. */
        void close();
    }

    /** Opens the microphone and tells of what it hears, until closed or lost. */
    Listening listen(Listener listener);
}

package crowdline.console.passes;

/** What the passes in Prepare ask of the rest of the program; on the event thread, answered by new views. */
public interface PassesHost {
    /** Does nothing. */
    PassesHost NONE = new PassesHost() {
        @Override
        public void count(String passId, boolean counts) {}

        @Override
        public void note(String passId, String note) {}
    };

    /** Has a pass count, or not, from now on. */
    void count(String passId, boolean counts);

    /** Gives a pass another note. */
    void note(String passId, String note);
}

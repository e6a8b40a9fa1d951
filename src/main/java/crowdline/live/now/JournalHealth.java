package crowdline.live.now;

/** Whether what happens is being written down. */
public sealed interface JournalHealth {

    /** Everything that happened is on the disk, or has been on its way there for a moment only. */
    record Writing() implements JournalHealth {}

    /**
     * Everything is on the disk after it was not.
     *
     * @param said one sentence for the commentator
     */
    record WritingAgain(String said) implements JournalHealth {}

    /**
     * The disk takes its time; what it does not have yet would be lost in a crash.
     *
     * @param waiting how many events it does not have yet
     */
    record Slow(int waiting) implements JournalHealth {}

    /**
     * The journal is not being written; the show goes on.
     *
     * @param reason one sentence for the commentator
     * @param waiting how many events wait to be written; they are tried again with every event and every retry
     */
    record NotWriting(String reason, int waiting) implements JournalHealth {}
}

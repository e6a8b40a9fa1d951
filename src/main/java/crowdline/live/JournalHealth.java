package crowdline.live;

/** Whether what happens is being written down. */
public sealed interface JournalHealth {

    /** Everything that happened is on the disk. */
    record Writing() implements JournalHealth {}

    /**
     * The journal is not being written; the show goes on.
     *
     * @param reason one sentence for the commentator
     * @param waiting how many lines wait to be written; they are tried again with every event and every retry
     */
    record NotWriting(String reason, int waiting) implements JournalHealth {}
}

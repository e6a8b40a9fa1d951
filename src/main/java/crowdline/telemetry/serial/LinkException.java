package crowdline.telemetry.serial;

/** A link that cannot be opened; the message is one sentence with what to do. */
public final class LinkException extends Exception {
    private static final long serialVersionUID = 1L;
    private final boolean lasting;

    public LinkException(String message, boolean lasting) {
        super(message);
        this.lasting = lasting;
    }

    /** Whether there is no use in trying again, as at the end of a file. */
    boolean isLasting() {
        return lasting;
    }
}

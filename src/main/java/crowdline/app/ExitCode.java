package crowdline.app;

/** What commands end with. */
final class ExitCode {
    /** All well. */
    static final int FINE = 0;
    /** Findings that block. */
    static final int BLOCKED = 1;
    /** Wrong use, or a file that cannot be read or written. */
    static final int UNUSABLE = 2;

    private ExitCode() {}
}

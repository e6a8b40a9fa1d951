package crowdline.app.shell;

/** What commands end with. */
public final class ExitCode {
    /** All well. */
    public static final int FINE = 0;
    /** Findings that block. */
    public static final int BLOCKED = 1;
    /** Wrong use, or a file that cannot be read or written. */
    public static final int UNUSABLE = 2;

    private ExitCode() {}
}

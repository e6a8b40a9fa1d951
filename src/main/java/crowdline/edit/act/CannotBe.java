package crowdline.edit.act;

/** Thrown by an edit that cannot be made, with what to tell the user. */
public final class CannotBe extends Exception {
    private static final long serialVersionUID = 1;

    private final String why;

    /** @param why a whole sentence: what, which value, what is allowed */
    public CannotBe(String why) {
        super(why);
        this.why = why;
    }

    /** Why it cannot be, in a sentence. */
    public String why() {
        return why;
    }
}

package crowdline.practice;

/** Why there is no flight to practise on, in one sentence that says what to do. */
public final class CannotPractise extends Exception {
    private static final long serialVersionUID = 1L;

    CannotPractise(String why) {
        super(why);
    }

    /** The sentence. */
    public String why() {
        return String.valueOf(getMessage());
    }
}

package crowdline.paper;

/** There is nothing to put on such paper; the message says why and what to do, for the commentator. */
public final class NothingOnPaper extends Exception {
    private static final long serialVersionUID = 1;

    static NothingOnPaper noActs() {
        return new NothingOnPaper("this show has no acts yet; add one in Prepare");
    }

    NothingOnPaper(String why) {
        super(why);
    }
}

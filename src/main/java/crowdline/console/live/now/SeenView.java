package crowdline.console.live.now;

/**
 * What there is to see in the figure being flown.
 *
 * @param now the moment that came last, such as "Over the top"; empty before the first
 * @param next the one to come, such as "pulls out"; empty after the last
 */
public record SeenView(String now, String next) {
    public static final SeenView NOTHING = new SeenView("", "");

    /** Both, such as "Over the top, then pulls out". */
    String words() {
        return now.isEmpty() ? first() : next.isEmpty() ? now : now + ", then " + next;
    }

    /** The shorter form, where there is no room for both. */
    String shorter() {
        return now.isEmpty() ? first() : now;
    }

    private String first() {
        return next.isEmpty() ? "" : "Then " + next;
    }
}

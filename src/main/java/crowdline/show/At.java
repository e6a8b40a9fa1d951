package crowdline.show;

/** Paths into a show file and short forms of what stands there, as findings name them. */
final class At {
    private static final int LONGEST = 40;

    private At() {}

    static String act(int act) {
        return "acts[" + act + "]";
    }

    static String figure(int act, int figure) {
        return act(act) + ".figures[" + figure + "]";
    }

    static String variant(int act, int variant) {
        return act(act) + ".variants[" + variant + "]";
    }

    /** A value in quotes, shortened if long. */
    static String quoted(String text) {
        return '"' + (text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…") + '"';
    }
}

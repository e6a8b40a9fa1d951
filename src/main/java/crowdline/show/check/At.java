package crowdline.show.check;

/** Paths into a show file, as findings name them. */
final class At {
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
}

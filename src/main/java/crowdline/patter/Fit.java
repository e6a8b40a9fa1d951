package crowdline.patter;

import crowdline.speech.pace.SpokenTime;

/** How a remark fits into the time there is for it, the best first: one rule and one word for every screen and sheet. */
public enum Fit {
    /** A slow reading of it fits the usual figure, and the usual reading a short one. */
    FITS("Fits"),
    /** The usual reading fits the usual figure; either of them may go wrong. */
    JUST_FITS("Just fits"),
    /** It runs past the end of its figure, no further than the rules of planning allow. */
    RUNS_OVER("Runs over"),
    /** Only a long figure has room for it. */
    ON_A_GOOD_DAY("On a good day"),
    /** It does not fit. */
    TOO_LONG("Too long");

    private final String word;

    Fit(String word) {
        this.word = word;
    }

    /** As it is said on a screen. */
    public String word() {
        return word;
    }

    /** How something that takes so long fits into a room. */
    public static Fit of(SpokenTime takes, Room there) {
        double seconds = takes.seconds();
        if (seconds <= there.likelyS()) {
            boolean slowReading = takes.highS() <= there.likelyS();
            boolean shortFigure = seconds <= there.lowS() + there.pastS();
            return slowReading && shortFigure ? FITS : JUST_FITS;
        }
        if (seconds <= there.likelyS() + there.pastS()) {
            return RUNS_OVER;
        }
        return seconds <= there.highS() + there.pastS() ? ON_A_GOOD_DAY : TOO_LONG;
    }

    /** This, but no better than that: the plan, which knows of other remarks and quiets, may think less of it. */
    public Fit atBest(Fit limit) {
        return compareTo(limit) < 0 ? limit : this;
    }

    /** True if a plan can say it. */
    public boolean hasRoom() {
        return compareTo(RUNS_OVER) <= 0;
    }
}

package crowdline.steer;

import crowdline.follow.FollowNow;

/**
 * What has spoken for and against what the screen shows, in decades times seconds: a figure that is ten times as likely as
 * everything else for a second makes one. Both begin anew when something else comes to be shown. Not thread-safe.
 */
final class Balance {
    /** Off the plan, where a figure is asked for. */
    static final int OFF = -1;
    /** Nothing that moves a show. */
    static final int NOTHING = -2;

    /** Nothing is likelier than this, 0 to 1: a chance is as good as the prediction behind it. Tuned: 0.99 to 0.9995 works. */
    private static final double MOST = 0.998;
    /** What has spoken for a figure for long counts no more than this. Tuned: 10 to 40 works. */
    private static final double MOST_BACKING = 20;
    /** Share of a figure after which it may be over, and what spoke for it says nothing of what follows. Tuned: 0.7 to 0.9 works. */
    private static final double MAY_BE_OVER = 0.8;
    /** From one moment to the next no more than this is counted, seconds. */
    private static final double LONGEST_S = 1;

    private int shown = NOTHING;
    private int said = NOTHING;
    private double saidSinceS;
    private double against;
    private double backing;
    private double lastS = Double.NaN;

    /**
     * Takes what is said of the moment.
     *
     * @param nowShown the figure the screen shows, from 0, or {@link #OFF}
     */
    void sees(int nowShown, FollowNow now, double nowS) {
        double seconds = Double.isNaN(lastS) ? 0 : Math.min(Math.max(0, nowS - lastS), LONGEST_S);
        lastS = nowS;
        int nowSaid = said(now);
        if (nowSaid != said) {
            said = nowSaid;
            saidSinceS = nowS;
        }
        if (nowShown != shown) {
            shown = nowShown;
            against = 0;
            backing = 0;
        }
        if (now.silentS() > AircraftSteps.SILENT_S) {
            return;
        }
        double weight = seconds * decades(now);
        if (said != shown) {
            against = Math.max(0, against + weight);
            return;
        }
        against = Math.max(0, against - Math.max(0, weight));
        backing = Math.min(MOST_BACKING, backing + Math.max(0, weight));
        if (shown != OFF && now.phase() > MAY_BE_OVER) {
            backing = 0;
        }
    }

    private static int said(FollowNow now) {
        return switch (now.state()) {
            case ON_PLAN -> now.figureIndex();
            case OFF_PLAN -> OFF;
            case BEFORE, AFTER, UNSURE -> NOTHING;
        };
    }

    /** How many powers of ten what is said is likelier than all else. */
    private static double decades(FollowNow now) {
        double chance = switch (now.state()) {
            case ON_PLAN ->
                now.alternatives().stream()
                        .filter(c -> c.figureIndex() == now.figureIndex())
                        .mapToDouble(FollowNow.Candidate::chance)
                        .findFirst()
                        .orElse(now.confidence());
            case OFF_PLAN -> now.confidence();
            case BEFORE, AFTER, UNSURE -> 0.5;
        };
        double most = Math.min(chance, MOST);
        return Math.log10(most / (1 - most));
    }

    /** The figure said, from 0, {@link #OFF}, or {@link #NOTHING}. */
    int said() {
        return said;
    }

    /** Since when the same is said, in the session's seconds. */
    double saidSinceS() {
        return saidSinceS;
    }

    /** What speaks against what is shown; 0 and more. */
    double against() {
        return against;
    }

    /** What has spoken for what is shown, unless that may be over; 0 to 20. */
    double backing() {
        return backing;
    }
}

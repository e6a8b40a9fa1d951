package crowdline.sight.clue;

import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.MomentKind;
import java.util.List;

/**
 * A plain question about what was seen, and which answers a figure allows. Where one onlooker would say one thing and the next
 * another, both are allowed. The thresholds are judgement, no source: where people would begin to say so.
 */
enum Clue {
    WHO(
            "What is flying?",
            List.of(
                    "one aeroplane, showing something",
                    "one aeroplane, only coming, going or climbing",
                    "several together",
                    "a helicopter",
                    "people with parachutes")) {
        @Override
        int ofAStall() {
            return only(0);
        }

        @Override
        int allowed(CatalogueEntry entry, List<Traits> traits) {
            return switch (entry.family()) {
                case "formation" -> only(2);
                case "helicopter" -> only(3);
                case "parachuting" -> only(4);
                case "coming and going" -> traits.isEmpty() ? only(1) : only(0) | only(1);
                case "stalled" -> ofAStall();
                default -> traits.isEmpty() ? only(1) : only(0);
            };
        }
    },
    STOPPED(
            "Did it stop flying for a moment?",
            List.of(
                    "no",
                    "it swung round on one wing",
                    "it fell back, tail first",
                    "it hung on its propeller",
                    "it spun down",
                    "it tumbled")) {
        @Override
        int ofAStall() {
            return only(4);
        }

        @Override
        int allowed(Traits t) {
            int allowed = (t.has(MomentKind.PIVOTS) ? only(1) : 0)
                    | (t.has(MomentKind.SLIDES_BACKWARDS) ? only(2) : 0)
                    | (t.has(MomentKind.HANGS) ? only(3) : 0)
                    | (t.has(MomentKind.SPIN_BEGINS) ? only(4) : 0)
                    | (t.has(MomentKind.TUMBLES) ? only(5) : 0);
            return allowed == 0 ? only(0) : allowed;
        }
    },
    LINE(
            "What did its path look like?",
            List.of(
                    "level, or nearly so",
                    "a circle standing on its edge, or part of one",
                    "straight up",
                    "up or down a slope, or straight down",
                    "round a curve, leaning over")) {
        @Override
        int ofAStall() {
            return only(3);
        }

        @Override
        int allowed(Traits t) {
            double tall = Math.max(t.riseM(), t.dropM());
            int allowed = (tall < 70 ? only(0) : 0)
                    | (t.loopedDeg() > 95 && tall > 50 ? only(1) : 0)
                    | (t.upS() > 2 ? only(2) : 0)
                    | ((t.slopeS() > 1.4 && t.upS() < 3) || t.downS() > 1 ? only(3) : 0)
                    | (t.roundDeg() > 40 || t.onItsSideS() > 1.4 ? only(4) : 0);
            return allowed == 0 ? ANY : allowed;
        }
    },
    ROLLED("How far did it roll?", List.of("not at all", "half round", "once round", "more than once")) {
        @Override
        int allowed(Traits t) {
            double rolled = t.rolledDeg();
            boolean whirls = t.has(MomentKind.SPIN_BEGINS) || t.has(MomentKind.TUMBLES);
            // Leaning into a turn and out of it again is no roll to whoever watches.
            boolean leans = t.roundDeg() > 40 && t.upsideDownS() < 0.1;
            return whirls
                    ? ANY
                    : (rolled < 120 || leans ? only(0) : 0)
                            | (rolled > 60 && rolled < 260 ? only(1) : 0)
                            | (rolled > 220 && rolled < 480 ? only(2) : 0)
                            | (rolled > 400 ? only(3) : 0);
        }
    },
    HOW_IT_ROLLED(
            "How did it roll?",
            List.of("it did not", "smoothly, in a second or two", "slowly", "in steps", "as quick as a blink")) {
        @Override
        int allowed(Traits t) {
            double turns = t.rolledDeg() / 360;
            double perTurnS = t.rollingS() / Math.max(turns, 0.25);
            boolean flicks = t.has(MomentKind.FLICKS);
            return (t.rolledDeg() < 150 || (t.roundDeg() > 40 && t.upsideDownS() < 0.1) ? only(0) : 0)
                    | (!flicks && t.rolledDeg() > 60 && perTurnS < 6 ? only(1) : 0)
                    | (!flicks && perTurnS > 2.5 ? only(2) : 0)
                    | (t.stops() > 0 ? only(3) : 0)
                    | (flicks || perTurnS < 1 ? only(4) : 0);
        }
    },
    UPSIDE_DOWN(
            "Was it upside down?",
            List.of("never", "only in passing, or over the top", "level on its back for a while")) {
        @Override
        int allowed(Traits t) {
            boolean looped = t.loopedDeg() > 95;
            double s = t.upsideDownS();
            return (s < 0.6 ? only(0) : 0)
                    | ((s > 0.1 && s < 3) || looped || t.rolledDeg() > 150 ? only(1) : 0)
                    | ((s > 1.2 && !looped) || s > 3 ? only(2) : 0);
        }
    },
    WAY("Which way did it leave?", List.of("on, the way it had been going", "back, the way it had come")) {
        @Override
        int allowed(Traits t) {
            boolean anyhow = t.has(MomentKind.SPIN_BEGINS)
                    || t.has(MomentKind.TUMBLES)
                    || t.has(MomentKind.HANGS)
                    || t.roundDeg() > 40;
            return anyhow ? ANY : only(t.back() ? 1 : 0);
        }
    },
    ENDED("Where did it end?", List.of("higher than it began", "lower", "about as high")) {
        @Override
        int ofAStall() {
            return only(1);
        }

        @Override
        int allowed(Traits t) {
            return (t.netM() > 30 ? only(0) : 0)
                    | (t.netM() < -30 ? only(1) : 0)
                    | (Math.abs(t.netM()) < 120 ? only(2) : 0);
        }
    },
    CIRCLE(
            "How much of a circle did it draw, standing on edge?",
            List.of("none", "about half", "about three quarters", "a whole one", "more than one")) {
        @Override
        int ofAStall() {
            return only(0);
        }

        @Override
        int allowed(Traits t) {
            double looped = t.loopedDeg();
            // Where lines lead to and from half a circle, as in a humpty bump, one tells the half and the next all of
            // it.
            boolean half = t.archDeg() > 150 && t.archDeg() < 210 && looped > 300 && t.upS() > 1;
            // Up and down again with a line between is no circle to whoever watches.
            boolean corners = t.archDeg() < 110 && t.upS() > 1;
            return (looped < 130 || corners ? only(0) : 0)
                    | ((looped > 80 && looped < 240) || half ? only(1) : 0)
                    | (looped > 190 && looped < 330 ? only(2) : 0)
                    | (looped > 280 && looped < 430 ? only(3) : 0)
                    | (looped > 380 ? only(4) : 0);
        }
    },
    INSIDE("What was towards the middle of the circle?", List.of("its top", "its wheels", "there was no circle")) {
        @Override
        int allowed(Traits t) {
            double pushed = t.loopedDeg() < 1 ? 0 : t.pushedDeg() / t.loopedDeg();
            return (t.loopedDeg() < 130 ? only(2) : 0)
                    | (t.loopedDeg() > 80 && pushed < 0.75 ? only(0) : 0)
                    | (t.loopedDeg() > 80 && pushed > 0.2 ? only(1) : 0);
        }
    };

    /** Every answer is allowed. */
    static final int ANY = -1;

    private final String question;

    @SuppressWarnings("ImmutableEnumChecker") // filled by List.of, so it never changes
    private final List<String> answers;

    Clue(String question, List<String> answers) {
        this.question = question;
        this.answers = answers;
    }

    String question() {
        return question;
    }

    List<String> answers() {
        return answers;
    }

    /**
     * The answers a figure allows, a bit for each; any where nothing is known of its flight.
     *
     * @param traits as one aircraft and another flies it; none where it is only timed
     */
    int allowed(CatalogueEntry entry, List<Traits> traits) {
        if (entry.family().equals("stalled") && entry.elements().isEmpty()) {
            return ofAStall();
        }
        int allowed = traits.isEmpty() ? ANY : 0;
        for (Traits one : traits) {
            allowed |= allowed(one);
        }
        return allowed;
    }

    int allowed(Traits traits) {
        return ANY;
    }

    /** What is allowed of a figure that nothing is computed of but that it comes down stalled. */
    int ofAStall() {
        return ANY;
    }

    static int only(int answer) {
        return 1 << answer;
    }
}

package crowdline.list.draft;

import crowdline.list.line.ListLine;
import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;

/** What a number in a piece says: how fast, how high, how long. */
public final class Measured {
    /** A number without a unit from here on is a speed in knots; one below may count anything. */
    public static final double LEAST_BARE_KT = 50;
    /** A number without a unit from here on is a height in feet: nothing in a list is as fast. */
    public static final double LEAST_BARE_FT = 500;

    /** What is counted is flown whole, or a half or a quarter of it. */
    private static final double PARTS = 4;

    private static final double PASS_STEP = 50;
    /** Knots: no display is flown as fast. Common practice, no source. */
    private static final double FASTEST_KT = 660;

    private static final double CIRCLE = 360;
    /** "Pedal turn 720": nobody goes round as often. */
    private static final double MOST_CIRCLES = 5;

    /** Feet: what is called a base or a height may be as low. */
    static final double LEAST_CALLED_FT = 20;

    private Measured() {}

    /** "At 200" says of a pass how high it is, or how fast. */
    static boolean isPass(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense == null
                || (sense.figure().endsWith("pass") && !sense.figure().startsWith("knife"));
    }

    /** Of which "3 m" are metres: none lasts as many minutes. */
    static boolean isAPass(Draft draft) {
        return draft.sense() != null && isPass(draft);
    }

    /** Passes are flown at full fifties of feet; common practice, no source. "At 65" says how fast. */
    static boolean isNoPassHeight(double number) {
        return number % PASS_STEP != 0;
    }

    static boolean isAngle(Draft draft, double number) {
        Names.Sense sense = draft.sense();
        return sense != null && Sided.isAngle(sense.figure(), number);
    }

    static Saying.Meaning bareSpeed() {
        return (draft, found) -> {
            double kt = group(found, 1);
            return kt >= LEAST_BARE_KT && kt < LEAST_BARE_FT && number(draft, Detail.ENTRY_KT, kt);
        };
    }

    /** "Take-off 1400". */
    private static boolean isTimeOfDay(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null && Set.of("take-off", "landing").contains(sense.figure());
    }

    /** "Loop 330 / 500": how fast, and how high, as running orders have it. */
    static final String PAIR = "(\\d{2,3}) / (\\d{3,4})(?=(?: ·)* $)";

    static Saying.Meaning speedAndHeight() {
        return (draft, found) -> {
            double kt = group(found, 1);
            return kt >= LEAST_BARE_KT
                    && !isAngle(draft, kt)
                    && !draft.says(Detail.ENTRY_KT)
                    && number(draft, Detail.ENTRY_KT, kt)
                    && number(draft, Detail.HEIGHT_FT, group(found, 2));
        };
    }

    static Saying.Meaning bareHeight() {
        return bareHeight(LEAST_BARE_FT);
    }

    /** @param leastFt feet; what is lower says something else */
    static Saying.Meaning bareHeight(double leastFt) {
        return (draft, found) -> {
            double ft = group(found, 1);
            if (isAngle(draft, ft) && ft % CIRCLE == 0 && ft > CIRCLE && ft <= MOST_CIRCLES * CIRCLE) {
                return number(draft, Detail.COUNT, ft / CIRCLE);
            }
            if (isAPass(draft) && isNoPassHeight(ft) && ft >= LEAST_BARE_FT && ft < FASTEST_KT) {
                return number(draft, Detail.ENTRY_KT, ft);
            }
            return !isTimeOfDay(draft) && ft >= leastFt && number(draft, Detail.HEIGHT_FT, ft);
        };
    }

    /** Of "40 to 50" the middle. */
    static Saying.Meaning measured(Detail detail, DoubleUnaryOperator unit) {
        return (draft, found) -> number(draft, detail, unit.applyAsDouble(middle(found)));
    }

    static double middle(Matcher found) {
        double last = group(found, 2);
        return found.group(1) == null || group(found, 1) >= last ? last : (group(found, 1) + last) / 2;
    }

    static double group(Matcher found, int group) {
        return Double.parseDouble(found.group(group));
    }

    /** Lets a figure take a number; false if a show file cannot have it. */
    public static boolean number(Draft draft, Detail detail, double value) {
        double most = switch (detail) {
            case ENTRY_KT -> ListLine.MOST_KT;
            case HEIGHT_FT -> ListLine.MOST_FT;
            case SECONDS -> ListLine.MOST_SECONDS;
            default -> ListLine.MOST_COUNT;
        };
        double least = detail == Detail.HEIGHT_FT ? 0 : detail == Detail.ENTRY_KT ? 1 : ListLine.LEAST;
        boolean isPart = detail == Detail.COUNT && Math.rint(value * PARTS) != value * PARTS;
        if (value < least || value > most || isPart) {
            return false;
        }
        draft.say(detail, value);
        return true;
    }
}

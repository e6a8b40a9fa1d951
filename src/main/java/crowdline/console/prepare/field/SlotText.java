package crowdline.console.prepare.field;

import crowdline.measure.Hour;
import crowdline.show.bounds.Written;
import java.time.LocalTime;

/** Reads a slot as it is typed. */
public final class SlotText {
    private SlotText() {}

    /** What was typed is no time, or no number of minutes; the message says what is. */
    public static final class NoSlot extends Exception {
        private static final long serialVersionUID = 1;

        NoSlot(String sentence) {
            super(sentence);
        }
    }

    /** Hours and minutes, such as 14:30, 14.30, 1430 or 9:05. */
    public static LocalTime time(String typed) throws NoSlot {
        return Hour.typed(typed)
                .orElseThrow(
                        () -> new NoSlot("“" + brief(typed) + "” is no time; type hours and minutes, such as 14:30"));
    }

    /** Minutes, such as 12 or 7.5. */
    public static double minutes(String typed) throws NoSlot {
        String text = typed.strip().replaceFirst("(?i)\\s*(min|minutes)$", "");
        if (!text.matches("\\d{1,5}(\\.\\d{1,3})?")) {
            throw new NoSlot("“" + brief(typed) + "” is no number of minutes; type one, such as 12");
        }
        return Double.parseDouble(text);
    }

    private static String brief(String typed) {
        return Written.brief(typed, 21);
    }
}

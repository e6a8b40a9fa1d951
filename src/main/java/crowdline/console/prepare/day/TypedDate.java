package crowdline.console.prepare.day;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A day, as people write it: "2027-06-12", "12/6/2027", "12.06.27", "Saturday 12th June 2027", "June 12, 2027". Of two numbers
 * the first is the day, as in Britain and most of the world; the field shows what was understood.
 */
final class TypedDate {
    private static final String YEAR = "(\\d{4}|\\d{2})";
    private static final String DAY = "(\\d{1,2})(?:st|nd|rd|th)?";
    private static final String MONTH = "([a-z]{3,9})\\.?";
    private static final String WEEKDAY = "(?:[a-z]{3,9}\\.?,? )?";
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/. ](\\d{1,2})[-/. ](\\d{1,2})");
    private static final Pattern NUMBERS = Pattern.compile(WEEKDAY + "(\\d{1,2})[-/. ](\\d{1,2})[-/. ]" + YEAR);
    private static final Pattern DAY_FIRST =
            Pattern.compile(WEEKDAY + DAY + "[-/ ]?(?:of )?" + MONTH + "[-/, ] ?" + YEAR);
    private static final Pattern MONTH_FIRST = Pattern.compile(WEEKDAY + MONTH + " " + DAY + ",? " + YEAR);
    private static final int THIS_CENTURY = 2000;

    private TypedDate() {}

    /** What was typed; nothing if it is no day of the calendar. */
    static Optional<LocalDate> of(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        if (yearFirst.matches()) {
            return day(yearFirst.group(1), number(yearFirst.group(2)), yearFirst.group(3));
        }
        Matcher numbers = NUMBERS.matcher(text);
        if (numbers.matches()) {
            return day(numbers.group(3), number(numbers.group(2)), numbers.group(1));
        }
        Matcher dayFirst = DAY_FIRST.matcher(text);
        if (dayFirst.matches()) {
            return day(dayFirst.group(3), month(dayFirst.group(2)), dayFirst.group(1));
        }
        Matcher monthFirst = MONTH_FIRST.matcher(text);
        return monthFirst.matches()
                ? day(monthFirst.group(3), month(monthFirst.group(1)), monthFirst.group(2))
                : Optional.empty();
    }

    private static Optional<LocalDate> day(String year, int month, String day) {
        try {
            return Optional.of(
                    LocalDate.of(number(year) + (year.length() == 2 ? THIS_CENTURY : 0), month, number(day)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** 1 to 12; 0 for a word that is no month. */
    private static int month(String word) {
        return Stream.of(Month.values())
                .filter(m -> isShort(word)
                        ? m.name().startsWith(word.toUpperCase(Locale.ROOT).substring(0, 3))
                        : m.name().equalsIgnoreCase(word))
                .findFirst()
                .map(Month::getValue)
                .orElse(0);
    }

    private static boolean isShort(String word) {
        return word.length() == 3 || word.equals("sept");
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }
}

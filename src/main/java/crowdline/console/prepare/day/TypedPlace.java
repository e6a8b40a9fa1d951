package crowdline.console.prepare.day;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where something is, as people write it: "51.4, -0.9", "51.4N 0.9W", "N51 24 W0 54", "51°24'30\"N, 0°54'W".
 *
 * @param latDeg degrees north, south negative
 * @param lonDeg degrees east, west negative
 */
record TypedPlace(double latDeg, double lonDeg) {
    private static final String LETTER = "([NSEWnsew])";
    private static final String DEGREES = "([-−+]?\\d{1,3}(?:\\.\\d{1,9})?)\\s*°?"
            + "(?:\\s*(?<=[°\\s])(\\d{1,2}(?:\\.\\d{1,9})?)\\s*['′’]?"
            + "(?:\\s*(?<=['′’\\s])(\\d{1,2}(?:\\.\\d{1,9})?)\\s*(?:[\"″”]|''|’’)?)?)?";
    private static final String BEHIND = DEGREES + "\\s*" + LETTER + "?";
    private static final String BEFORE = LETTER + "\\s*" + DEGREES;
    private static final Pattern LETTERS_BEHIND =
            Pattern.compile(BEHIND + "\\s*(?:[,;]|(?<=[NSEWnsew])|(?<=[NSEWnsew]\\s))\\s*" + BEHIND);
    private static final Pattern LETTERS_BEFORE = Pattern.compile(BEFORE + "\\s*[,;]?\\s*" + BEFORE);
    /** Two plain numbers, which are no degrees and minutes: no comma need stand between them. */
    private static final Pattern PLAIN =
            Pattern.compile("([-−+]?\\d{1,2}(?:\\.\\d{1,9})?)\\s+([-−+]?\\d{1,3}(?:\\.\\d{1,9})?)");

    /** What was typed; nothing if it is no place, or says one half twice. */
    static Optional<TypedPlace> of(String typed) {
        String text = typed.strip();
        Matcher plain = PLAIN.matcher(text);
        if (plain.matches()) {
            return Optional.of(new TypedPlace(number(plain.group(1)), number(plain.group(2))));
        }
        Matcher behind = LETTERS_BEHIND.matcher(text);
        Matcher before = LETTERS_BEFORE.matcher(text);
        Half first;
        Half second;
        if (behind.matches()) {
            first = half(behind, 4, 1);
            second = half(behind, 8, 5);
        } else if (before.matches()) {
            first = half(before, 1, 2);
            second = half(before, 5, 6);
        } else {
            return Optional.empty();
        }
        if (first == null || second == null) {
            return Optional.empty();
        }
        if (first.isOf("EW") || second.isOf("NS")) {
            Half other = first;
            first = second;
            second = other;
        }
        return first.isOf("EW") || second.isOf("NS")
                ? Optional.empty()
                : Optional.of(new TypedPlace(first.degrees(), second.degrees()));
    }

    /** The time zone of a name in any case, or of the name of its city alone; nothing if there is none, or more than one. */
    static Optional<ZoneId> zone(String typed) {
        String name = typed.strip();
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            String wanted = name.replace(' ', '_').toLowerCase(Locale.ROOT);
            List<String> found = ZoneId.getAvailableZoneIds().stream()
                    .filter(id -> !wanted.isEmpty() && ("/" + id.toLowerCase(Locale.ROOT)).endsWith("/" + wanted))
                    .toList();
            return found.size() == 1 ? Optional.of(ZoneId.of(found.get(0))) : Optional.empty();
        }
    }

    /** One half of a place. */
    private record Half(double degrees, String letter) {
        boolean isOf(String letters) {
            return !letter.isEmpty() && letters.contains(letter);
        }
    }

    /** Null if it contradicts itself: a sign with a letter, sixty minutes, or minutes behind a part of a degree. */
    private static @Nullable Half half(Matcher found, int letterAt, int from) {
        String letter =
                found.group(letterAt) == null ? "" : found.group(letterAt).toUpperCase(Locale.ROOT);
        String whole = found.group(from);
        double minutes = number(found.group(from + 1));
        double seconds = number(found.group(from + 2));
        boolean isSigned = !Character.isDigit(whole.charAt(0));
        boolean isSplit = found.group(from + 1) != null;
        if ((isSigned && !letter.isEmpty()) || minutes >= 60 || seconds >= 60 || (isSplit && whole.contains("."))) {
            return null;
        }
        double size = Math.abs(number(whole)) + minutes / 60 + seconds / 3600;
        boolean isNegative = whole.startsWith("-") || whole.startsWith("−") || letter.equals("S") || letter.equals("W");
        // About a tenth of a metre, and short enough to be read in a field.
        double degrees = Math.rint(size * 1e6) / 1e6;
        return new Half(isNegative ? -degrees : degrees, letter);
    }

    private static double number(@Nullable String group) {
        return group == null ? 0 : Double.parseDouble(group.replace('−', '-'));
    }
}

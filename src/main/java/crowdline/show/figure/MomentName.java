package crowdline.show.figure;

import java.util.Locale;
import java.util.Optional;

/**
 * What one moment of a figure is called: its kind and, where a figure has several of a kind, which of them.
 *
 * @param number in the order flown, 1 or more
 */
public record MomentName(MomentKind kind, int number) {
    /** More of one kind than any figure has. */
    private static final int MOST = 999;

    public MomentName {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException("a moment is counted from 1 to " + MOST + ", not " + number);
        }
    }

    public static MomentName first(MomentKind kind) {
        return new MomentName(kind, 1);
    }

    /** Such as "over the top", or "over the top 2" for the second one. */
    public String words() {
        return number == 1 ? kind.words() : kind.words() + " " + number;
    }

    /** The moment called so, whatever its capitals and spaces; empty if there is no such kind. */
    public static Optional<MomentName> of(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        for (MomentKind kind : MomentKind.values()) {
            if (plain.equals(kind.words())) {
                return Optional.of(first(kind));
            }
            if (plain.startsWith(kind.words() + " ")) {
                String rest = plain.substring(kind.words().length() + 1);
                if (rest.matches("[1-9][0-9]{0,2}")) {
                    return Optional.of(new MomentName(kind, Integer.parseInt(rest)));
                }
            }
        }
        return Optional.empty();
    }
}

package crowdline.arrange;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The lines of a list as figures that nothing is known of yet but what was asked. */
final class AskedFigures {
    /** Told twice in a row it is one: "break to land", and then "landing". */
    private static final Set<String> ONCE = Set.of("landing", "take-off", "wing rock", "canopy landing");

    /** One word that may be said of a figure: not which of several it is, whose, or how sure. */
    private static final Pattern DESCRIBES =
            Pattern.compile("(?i)(?!(?:first|second|third|last|final|next|then|same|another"
                    + "|repeat|optional|possible|possibly|maybe|perhaps|again|also|plus|after|before|into|from|with|and|or|the|an?|my"
                    + "|our|your|his|her|their|this|that|not|no|new|old|usual|normal|standard)$)\\p{L}{3,}");

    private final Catalogue catalogue;
    private final Set<String> taken = new HashSet<>();

    AskedFigures(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Figure> of(FigureList list) {
        List<ListLine> lines = new ArrayList<>();
        for (ListLine line : list.lines()) {
            ListLine last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            String figure = line.figure();
            if (last != null && figure != null && figure.equals(last.figure()) && ONCE.contains(figure)) {
                lines.set(lines.size() - 1, together(last, line));
            } else {
                lines.add(line);
            }
        }
        VerticalLines.together(lines);
        return lines.stream().map(this::figure).toList();
    }

    /** Both as one: what the second tells and the first does not is told. */
    static ListLine together(ListLine first, ListLine second) {
        return new ListLine(
                first.text() + ", " + second.text(),
                first.figure(),
                first.title(),
                first.count(),
                or(first.place(), second.place()),
                or(first.side(), second.side()),
                or(first.heading(), second.heading()),
                or(first.heightFt(), second.heightFt()),
                or(first.entryKt(), second.entryKt()),
                or(first.seconds(), second.seconds()),
                or(first.beginsS(), second.beginsS()),
                or(first.smoke(), second.smoke()),
                first.note() == null || second.note() == null
                        ? or(first.note(), second.note())
                        : first.note() + "; " + second.note(),
                first.sure() && second.sure(),
                first.choices().isEmpty() ? second.choices() : first.choices());
    }

    private static <T> @Nullable T or(@Nullable T first, @Nullable T second) {
        return first == null ? second : first;
    }

    private Figure figure(ListLine line) {
        String name = line.figure() == null ? line.title() : line.figure();
        String title = line.title().equals(nameOf(name)) ? described(line) : line.title();
        return new Figure(
                id(line.title()),
                name,
                title,
                null,
                null,
                line.seconds(),
                null,
                null,
                asked(line),
                false,
                List.of(),
                List.of());
    }

    /**
     * What the list calls it with a word before the figure's own name that nothing else holds, such as "fan break"; null if
     * that is all there is to it, or the word is none that describes.
     */
    private static @Nullable String described(ListLine line) {
        String note = line.note();
        String text = line.text().strip();
        return note != null
                        && line.count() == null
                        && DESCRIBES.matcher(note).matches()
                        && text.equalsIgnoreCase(note + " " + line.title())
                ? text.toLowerCase(Locale.ROOT)
                : null;
    }

    private String nameOf(String figure) {
        return catalogue.find(figure).map(e -> e.name()).orElse(figure);
    }

    private static Asked asked(ListLine line) {
        return new Asked(
                line.text(),
                line.count(),
                line.place() == null ? null : Asked.Place.valueOf(line.place().name()),
                null,
                line.side() == null ? null : Asked.Hand.valueOf(line.side().name()),
                line.heading(),
                line.heightFt(),
                line.entryKt(),
                line.seconds(),
                line.beginsS(),
                note(line),
                line.sure(),
                line.choices(),
                false);
    }

    private static @Nullable String note(ListLine line) {
        Boolean smoke = line.smoke();
        if (smoke == null) {
            return line.note();
        }
        String words = smoke ? "smoke on" : "smoke off";
        return line.note() == null ? words : line.note() + "; " + words;
    }

    /** From the words of the name, as a person would write it. */
    private String id(String title) {
        return FreshId.of(title, taken);
    }
}

package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.draft.Formations;
import crowdline.list.piece.Heard;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Who of several flies a line: "Rowan: loop", "both: stall turn". */
final class WhoFlies {
    private static final int LONGEST = 3;
    /** One name alone heads the list, or is what a figure is called. */
    private static final int LEAST = 2;

    private static final Set<String> ALL =
            Set.of("together", "both", "all", "everyone", "everybody", "formation", "team");

    private static final Set<String> DAYS =
            Set.of("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "sat", "sun", "today");

    /** A colon or a dash stands behind who flies. */
    private static final Pattern BEHIND = Pattern.compile(".*(?::|\\s[-–—]+)\\s*", Pattern.DOTALL);

    private final Text text;
    private final List<Line> lines = new ArrayList<>();

    /** A name, and what stands behind it. */
    private record Line(String who, List<Draft> drafts) {}

    WhoFlies(Text text) {
        this.text = text;
    }

    /** Lets the figures of a line be those that several fly together, if all of them fly it. */
    static void together(List<Heard> ahead, List<Heard> flown) {
        if (ahead.stream().anyMatch(WhoFlies::isAll)) {
            flown.stream().flatMap(piece -> piece.drafts().stream()).forEach(Formations::flyTogether);
        }
    }

    /** Hears what stands ahead of the figures of a line. */
    void hear(List<Heard> ahead, List<Draft> drafts) {
        ahead.stream()
                .filter(this::isWho)
                .map(piece ->
                        text.piece(named(piece).get(0).start(), piece.piece().to()))
                .forEach(who -> lines.add(new Line(who, List.copyOf(drafts))));
    }

    /** Lets the figures note whose name stands ahead of them, if there are several. */
    void note() {
        if (lines.stream().map(Line::who).distinct().count() >= LEAST) {
            lines.forEach(
                    line -> line.drafts().stream().filter(Draft::isFigure).forEach(draft -> draft.remark(line.who())));
        }
    }

    private static boolean isAll(Heard piece) {
        return piece.words().size() <= 2
                && !piece.beginsWith(Manner.GREETING)
                && piece.words().stream().anyMatch(word -> ALL.contains(word.plain()));
    }

    /** A name with a colon behind it, which is no heading. */
    private boolean isWho(Heard piece) {
        String written =
                text.written().substring(piece.piece().from(), piece.piece().end());
        List<Word> named = named(piece);
        return !named.isEmpty()
                && !piece.isFigure()
                && named.size() <= LONGEST
                && BEHIND.matcher(written).matches()
                && Character.isUpperCase(text.written().charAt(named.get(0).start()))
                && named.stream().noneMatch(WhoFlies::isOfAHeading);
    }

    private static boolean isOfAHeading(Word word) {
        return Manner.HEADING.has(word)
                || Manner.SENTENCE.has(word)
                || Manner.LABEL.has(word)
                || DAYS.contains(word.plain())
                || (Manner.FILLER.has(word) && !ALL.contains(word.plain()));
    }

    /** Its words behind the time that it is flown at. */
    private static List<Word> named(Heard piece) {
        return piece.words().stream()
                .dropWhile(word -> word.plain().indexOf(':') >= 0)
                .toList();
    }
}

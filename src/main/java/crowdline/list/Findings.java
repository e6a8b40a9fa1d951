package crowdline.list;

import crowdline.list.about.Heights;
import crowdline.list.draft.Draft;
import crowdline.list.line.Aside;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.word.Text;
import crowdline.list.word.Words;
import crowdline.show.bounds.Written;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes a list of what was put together, and says what is wrong with it. */
final class Findings {
    /** An act of a show file has no more. */
    static final int MOST_FIGURES = 300;

    /** A text with fewer words for each figure may talk, and lists them all the same. */
    private static final int WORDS_A_FIGURE = 60;

    private static final int LEAST_OF_A_LIST = 5;
    /** The same of a text with few of them. */
    private static final int WORDS_A_FIGURE_OF_FEW = 40;

    private static final int LEAST_OF_FEW = 3;
    private static final int NAMED = 3;
    /** Longer texts share a word with some figure by chance. */
    private static final int LONGEST_GUESS = 8;

    private static final int LONGEST_QUOTE = 40;

    private final Text text;
    private final Function<String, List<String>> nearest;
    private final List<Finding> findings = new ArrayList<>();

    /** @param nearest figures that own words may mean */
    Findings(Text text, Function<String, List<String>> nearest) {
        this.text = text;
        this.nearest = nearest;
    }

    FigureList listed(Assembly assembly, int textLines) {
        List<ListLine> lines = BeginTimes.of(assembly.lines().stream()
                .map(draft -> draft.line(draft.written(text), nearest))
                .map(line -> line.figure() != null || text.hasSmallLetters() ? line : line.inSmallLetters())
                .toList());
        List<ListLine> figures =
                lines.stream().filter(line -> line.figure() != null).toList();
        long words = Words.of(text.folded()).size();
        if (textLines == 0) {
            error(
                    "list-empty",
                    "The list is empty; paste what the pilot sent, such as \"loop, stall turn, slow roll\"");
        } else if (figures.isEmpty()) {
            error(
                    "list-no-figures",
                    "No figure was recognised in " + textLines + (textLines == 1 ? " line" : " lines")
                            + "; is this a list of figures in English?");
        } else if (isTelling(lines, words)) {
            return new FigureList(
                    List.of(),
                    List.of(new Aside(text.written().strip(), 0, List.of())),
                    List.of(new Finding(
                            Severity.ERROR,
                            "list-no-figures",
                            String.format(
                                    Locale.UK,
                                    "Only %,d of %,d words name a figure; is this a list of figures in English?",
                                    figures.size(),
                                    words),
                            "")));
        } else if (lines.size() > MOST_FIGURES) {
            error(
                    "list-too-many",
                    String.format(
                            Locale.UK,
                            "The list has %,d figures; an act has %,d at most, so cut it down",
                            lines.size(),
                            MOST_FIGURES));
        } else if (figures.size() * 3 < lines.size() && lines.size() > 5) {
            warning(
                    "list-few-figures",
                    figures.size() + " of " + lines.size()
                            + " pieces were recognised; is this a list of figures in English?",
                    "");
        }
        for (int i = 0; i < lines.size(); i++) {
            contradictions(assembly.lines().get(i), lines.get(i), i);
        }
        assembly.asides().asked().forEach(question -> warning("list-ask", question, ""));
        unknown(lines, figures);
        told(assembly.asides().told());
        Heights.contradiction(text.written()).ifPresent(why -> warning("list-heights", why, ""));
        return new FigureList(lines, asides(assembly), findings);
    }

    private List<Aside> asides(Assembly assembly) {
        List<Integer> begins = assembly.lines().stream().map(Draft::start).toList();
        return assembly.asides().written().stream()
                .map(stretch -> new Aside(
                        stretch.text(),
                        (int) begins.stream()
                                .filter(begin -> begin < stretch.start())
                                .count(),
                        Words.of(Words.folded(stretch.text())).size() > LONGEST_GUESS
                                ? List.of()
                                : nearest.apply(stretch.text())))
                .toList();
    }

    /** Many words, and few of them a figure and nothing else. */
    private static boolean isTelling(List<ListLine> lines, long words) {
        long plain = lines.stream()
                .filter(line -> line.sure() && line.note() == null)
                .count();
        long figures =
                lines.stream().map(ListLine::figure).filter(Objects::nonNull).count();
        long different = lines.stream()
                .map(ListLine::figure)
                .filter(Objects::nonNull)
                .distinct()
                .count();
        boolean isList = (different >= LEAST_OF_A_LIST && words <= WORDS_A_FIGURE * figures)
                || (different >= LEAST_OF_FEW && words <= WORDS_A_FIGURE_OF_FEW * figures);
        return !isList && words > 150 && words > WORDS_A_FIGURE * plain && lines.size() > 2 * plain;
    }

    private void contradictions(Draft draft, ListLine line, int at) {
        draft.contradicted().stream()
                .distinct()
                .forEach(detail -> warning(
                        "line-contradicts",
                        quoted(line.text()) + " says more than one " + detail.called()
                                + "; the first was taken, so say which is meant",
                        "lines[" + at + "]"));
    }

    private void unknown(List<ListLine> lines, List<ListLine> figures) {
        List<ListLine> unknown =
                lines.stream().filter(line -> line.figure() == null).toList();
        if (unknown.isEmpty() || figures.isEmpty()) {
            return;
        }
        boolean one = unknown.size() == 1;
        warning(
                "line-no-figure",
                named(unknown.stream().map(ListLine::title).toList())
                        + (one ? " is no figure of the catalogue; it is" : " are no figures of the catalogue; they are")
                        + " only timed, under " + (one ? "its" : "their")
                        + " own words, so choose a figure"
                        + (unknown.stream().allMatch(line -> line.seconds() != null)
                                ? " if there is one"
                                : " or say how long " + (one ? "it lasts" : "they last")),
                "");
    }

    private void told(List<String> told) {
        if (!told.isEmpty()) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "list-told",
                    named(told) + (told.size() == 1 ? " names a figure, and was" : " name figures, and were")
                            + " taken for a remark, not for a part of the list",
                    ""));
        }
    }

    private static String named(List<String> texts) {
        String named = texts.stream().limit(NAMED).map(Findings::quoted).collect(Collectors.joining(", "));
        return texts.size() <= NAMED ? named : named + " and " + (texts.size() - NAMED) + " more";
    }

    private static String quoted(String text) {
        String line = text.replaceAll("\\s+", " ");
        return '"' + Written.brief(line, LONGEST_QUOTE) + '"';
    }

    private void error(String code, String message) {
        findings.add(new Finding(Severity.ERROR, code, message, ""));
    }

    private void warning(String code, String message, String path) {
        findings.add(new Finding(Severity.WARNING, code, message, path));
    }
}

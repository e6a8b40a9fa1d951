package crowdline.console.prepare.list;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.list.about.AboutAct;
import crowdline.list.line.Aside;
import crowdline.list.line.Corrected;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.word.MailHead;
import crowdline.show.bounds.Written;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What was read in a pilot's list.
 *
 * @param rows one for each figure, in order
 * @param head how many were read, and how many are to be asked about
 * @param wrong why no act can be made of it, or what is doubtful; empty if nothing is
 * @param isUsable whether an act can be made of it
 */
public record ListView(List<Row> rows, String head, String wrong, boolean isUsable) {
    private static final int LONGEST_NOTE = 60;
    /** What may be a condition is said, whatever else it tells. */
    private static final Pattern CONDITION = Pattern.compile(
            "(?i)\\b(?:if|unless|only|but|except|not|no|without|weather|wind|cloud\\w*|rain|depending|either|or|instead)\\b");

    static final String HOW =
            "Paste the list as the pilot sent it, or type it: one figure a line, or with commas between."
                    + " What is read of it appears here. Leave it empty to add the figures one by one.";

    /** Nothing is pasted yet. */
    static final ListView NOTHING = new ListView(List.of(), HOW, "", false);

    /**
     * One figure of the list.
     *
     * @param key by which it is corrected, as {@link Corrected} has it
     * @param text as it was written
     * @param figure what it is taken for
     * @param told what the list says of it, in words; empty if nothing
     * @param assumed what it does not say
     * @param mark whether it is sure
     * @param choices what may be meant instead, chosen by number
     * @param flown whether it is part of the act
     */
    public record Row(
            int key,
            String text,
            String figure,
            String told,
            String assumed,
            Mark mark,
            List<String> choices,
            boolean flown) {
        public Row {
            choices = List.copyOf(choices);
        }

        /** Whether it is asked what it means: what was left out can be taken in, but nobody waits for that. */
        boolean isGuess() {
            return flown && !choices.isEmpty();
        }

        Row asSaid() {
            return new Row(
                    key, text, figure, told, assumed, new Mark(Form.DISC, Tone.GOOD, "as you said"), List.of(), flown);
        }

        Row leftOut() {
            return new Row(key, text, figure, told, "", new Mark(Form.CROSS, Tone.CALM, "left out"), List.of(), false);
        }
    }

    public ListView {
        rows = List.copyOf(rows);
    }

    /**
     * What was read.
     *
     * @param list with what somebody corrected in it
     * @param timed whether what flies it is only timed, so that any words are a figure
     * @param showsAsides whether what was left out has rows too, each in its place
     */
    public static ListView of(Corrected list, boolean timed, boolean showsAsides) {
        List<Row> rows = new ArrayList<>();
        for (int key : list.keys()) {
            ListLine line = list.line(key);
            if (line != null) {
                Row row = row(key, line, timed);
                rows.add(list.isSaid(key) && line.figure() != null ? row.asSaid() : row);
            } else if (!Corrected.isAside(key)) {
                rows.add(row(key, list.read().lines().get(key), timed).leftOut());
            } else if (showsAsides) {
                rows.add(leftOut(key, list.aside(key)));
            }
        }
        FigureList flown = list.list();
        List<Finding> findings = flown.findings();
        if (findings.stream().anyMatch(f -> f.code().equals("list-empty"))) {
            return NOTHING;
        }
        String wrong = findings.stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .findFirst()
                .map(Finding::message)
                .orElseGet(() -> leftOut(flown.notes()));
        boolean isUsable = findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
        return new ListView(rows, head(flown, rows, showsAsides), wrong, isUsable);
    }

    private static String head(FigureList flown, List<Row> rows, boolean showsAsides) {
        int figures = flown.lines().size();
        int out = flown.asides().size();
        return figures
                + (figures == 1 ? " figure read" : " figures read")
                + guesses(rows.stream().filter(Row::isGuess).count())
                + (out == 0
                        ? ""
                        : "; " + out + " left out: "
                                + (showsAsides ? "Insert takes one in" : "Alt+L shows " + (out == 1 ? "it" : "them")));
    }

    private static String guesses(long open) {
        return open == 0
                ? ""
                : open == 1
                        ? "; 1 is a guess: press its number"
                        : "; " + open + " are guesses: press a number for each";
    }

    /** What is taken for no figure stays out of the act, and is said: it may be a condition of one. */
    private static String leftOut(List<String> written) {
        List<String> notes = written.stream()
                .filter(note -> !MailHead.isCourtesy(note) && !isUsed(note))
                .toList();
        if (notes.isEmpty()) {
            return "";
        }
        // A condition is lost where it is one of several.
        String first = notes.stream()
                .filter(note -> CONDITION.matcher(note).find())
                .findFirst()
                .orElse(notes.get(0))
                .strip()
                .replaceAll("\\s+", " ");
        return "Not taken as a figure to fly: “"
                + Written.brief(first, LONGEST_NOTE) + "”"
                + (notes.size() == 1 ? "" : " and " + (notes.size() - 1) + " more");
    }

    /** Whether it says who flies, when or for how long, which then stands in the fields below, and no condition beside. */
    private static boolean isUsed(String note) {
        return !CONDITION.matcher(note).find() && AboutAct.isToldBy(note);
    }

    private static Row leftOut(int key, Aside aside) {
        String text = aside.text().strip().replaceAll("\\s+", " ");
        Mark mark = isUsed(aside.text())
                ? new Mark(Form.DISC, Tone.CALM, "used below")
                : new Mark(Form.CROSS, Tone.CALM, "left out");
        return new Row(key, text, text, "", "", mark, aside.choices(), false);
    }

    private static Row row(int key, ListLine line, boolean timed) {
        String figure = line.title();
        List<String> told = new ArrayList<>();
        List<String> assumed = new ArrayList<>();
        say(told, null, "", count(line));
        if (!timed) {
            say(told, assumed, "place", line.place() == null ? null : words(line.place()));
            say(told, assumed, "height", line.heightFt() == null ? null : number(line.heightFt()) + " ft");
            say(told, assumed, "speed", line.entryKt() == null ? null : number(line.entryKt()) + " kt");
        }
        say(told, null, "", line.heading() == null ? null : from(line.heading()));
        say(told, null, "", line.side() == null ? null : "to the " + words(line.side()));
        say(told, timed ? assumed : null, "time", line.seconds() == null ? null : number(line.seconds()) + " s");
        return new Row(
                key,
                line.text().strip().replaceAll("\\s+", " "),
                figure,
                String.join(", ", told),
                assumed.isEmpty() ? "" : "assumed: " + String.join(", ", assumed),
                mark(line, timed),
                line.sure() ? List.of() : line.choices(),
                true);
    }

    private static Mark mark(ListLine line, boolean timed) {
        if (line.sure()) {
            return new Mark(Form.DISC, Tone.GOOD, "read");
        }
        if (line.figure() == null && (timed || line.choices().isEmpty())) {
            return new Mark(Form.CLOCK, Tone.CALM, "only a time");
        }
        return new Mark(Form.DIAMOND, Tone.CAUTION, line.figure() == null ? "which figure?" : "a guess");
    }

    private static void say(List<String> told, @Nullable List<String> assumed, String what, @Nullable String said) {
        if (said != null) {
            told.add(said);
        } else if (assumed != null) {
            assumed.add(what);
        }
    }

    /** Where it comes from, as a commentator sees it. */
    private static String from(Heading heading) {
        return switch (heading) {
            case RIGHT -> "from the left";
            case LEFT -> "from the right";
            case AWAY -> "away from the crowd";
            case CROWD -> "towards the crowd";
        };
    }

    private static @Nullable String count(ListLine line) {
        Double count = line.count();
        if (count == null) {
            return null;
        }
        boolean turns = line.title().contains("spin") || line.title().contains("tumble");
        return number(count) + (turns ? " turn" : " time") + (count == 1 ? "" : "s");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.UK, "%,.0f", value) : String.valueOf(value);
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

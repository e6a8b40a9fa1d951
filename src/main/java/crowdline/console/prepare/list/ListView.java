package crowdline.console.prepare.list;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.edit.act.AddAct;
import crowdline.list.about.AboutAct;
import crowdline.list.line.Aside;
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
import java.util.Map;
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
    /** Chosen for a line that is none of the act. */
    static final String LEFT_OUT = "";

    /** Chosen for what was left out and is flown all the same, by no name of the catalogue. */
    static final String OWN_WORDS = "~";

    private static final int LONGEST_NOTE = 60;
    /** What may be a condition is said, whatever else it tells. */
    private static final Pattern CONDITION = Pattern.compile(
            "(?i)\\b(?:if|unless|only|but|except|not|no|without|weather|wind|cloud\\w*|rain|depending|either|or|instead)\\b");

    static final String HOW =
            "Paste the list as the pilot sent it, or type it: one figure a line, or with commas between."
                    + " What is read of it appears here. Leave it empty to add the figures one by one.";

    /**
     * One figure of the list.
     *
     * @param key by which a choice for it is kept: the number of a line; below 0 what was left out, the first of them -1
     * @param text as it was written
     * @param figure what it is taken for
     * @param told what the list says of it, in words; empty if nothing
     * @param assumed what it does not say
     * @param mark whether it is sure
     * @param choices what may be meant instead, chosen by number
     */
    public record Row(
            int key, String text, String figure, String told, String assumed, Mark mark, List<String> choices) {
        public Row {
            choices = List.copyOf(choices);
        }

        Row leftOut() {
            return new Row(key, text, figure, told, "", new Mark(Form.CROSS, Tone.CALM, "left out"), List.of());
        }
    }

    public ListView {
        rows = List.copyOf(rows);
    }

    /**
     * What was read.
     *
     * @param chosen by the number of a line what it was chosen to mean; {@link #LEFT_OUT} if it is none
     * @param timed whether what flies it is only timed, so that any words are a figure
     * @param showsAsides whether what was left out has rows too, each in its place
     */
    public static ListView of(FigureList found, Map<Integer, String> chosen, boolean timed, boolean showsAsides) {
        FigureList list = chosen(found, chosen);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i <= list.lines().size(); i++) {
            for (int k = 0; k < list.asides().size(); k++) {
                Aside aside = list.asides().get(k);
                ListLine taken = taken(aside, chosen.get(-1 - k));
                if (aside.before() == i && taken != null) {
                    rows.add(row(-1 - k, taken, timed));
                } else if (aside.before() == i && showsAsides) {
                    rows.add(leftOut(-1 - k, aside));
                }
            }
            if (i < list.lines().size()) {
                Row row = row(i, list.lines().get(i), timed);
                rows.add(LEFT_OUT.equals(chosen.get(i)) ? row.leftOut() : row);
            }
        }
        String wrong = list.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .findFirst()
                .map(Finding::message)
                .orElseGet(() -> leftOut(list.notes()));
        boolean isEmpty = list.findings().stream().anyMatch(f -> f.code().equals("list-empty"));
        boolean isUsable = list.findings().stream().noneMatch(f -> f.severity() == Severity.ERROR);
        long open = rows.stream().filter(r -> isGuess(r, chosen)).count();
        long figures = rows.stream()
                .filter(r -> !isAside(r, chosen) && !LEFT_OUT.equals(chosen.get(r.key())))
                .count();
        long out = list.asides().size()
                - chosen.keySet().stream().filter(key -> key < 0).count();
        String head = figures
                + (figures == 1 ? " figure read" : " figures read")
                + guesses(open)
                + (out == 0
                        ? ""
                        : "; " + out + " left out: "
                                + (showsAsides ? "Insert takes one in" : "Alt+L shows " + (out == 1 ? "it" : "them")));
        return isEmpty ? new ListView(List.of(), HOW, "", false) : new ListView(rows, head, wrong, isUsable);
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

    /** Whether it is asked what a line means: what was left out can be taken in, but nobody waits for that. */
    static boolean isGuess(Row row, Map<Integer, String> chosen) {
        return !row.choices().isEmpty() && !isAside(row, chosen);
    }

    private static boolean isAside(Row row, Map<Integer, String> chosen) {
        return row.key() < 0 && !chosen.containsKey(row.key());
    }

    private static Row leftOut(int key, Aside aside) {
        String text = aside.text().strip().replaceAll("\\s+", " ");
        Mark mark = isUsed(aside.text())
                ? new Mark(Form.DISC, Tone.CALM, "used below")
                : new Mark(Form.CROSS, Tone.CALM, "left out");
        return new Row(key, text, text, "", "", mark, aside.choices());
    }

    /** The line that somebody takes what was left out for; null if nobody does. */
    private static @Nullable ListLine taken(Aside aside, @Nullable String chosen) {
        return chosen == null ? null : chosen.equals(OWN_WORDS) ? aside.timed() : aside.as(chosen);
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
        say(told, null, "", line.note());
        return new Row(
                key,
                line.text().strip().replaceAll("\\s+", " "),
                figure,
                String.join(", ", told),
                assumed.isEmpty() ? "" : "assumed: " + String.join(", ", assumed),
                mark(line, timed),
                line.sure() ? List.of() : line.choices());
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

    /** The list as it was chosen, with what was left out. */
    private static FigureList chosen(FigureList list, Map<Integer, String> names) {
        FigureList now = list;
        for (Map.Entry<Integer, String> each : names.entrySet()) {
            if (each.getKey() >= 0
                    && each.getKey() < now.lines().size()
                    && !each.getValue().equals(LEFT_OUT)) {
                now = AddAct.chosen(now, each.getKey(), each.getValue());
            }
        }
        return now;
    }

    /** The list as it was chosen: without what was left out, and with what was taken in. */
    public static FigureList taken(FigureList list, Map<Integer, String> names) {
        FigureList all = chosen(list, names);
        List<ListLine> lines = new ArrayList<>();
        List<Aside> left = new ArrayList<>();
        for (int i = 0; i <= all.lines().size(); i++) {
            for (int k = 0; k < all.asides().size(); k++) {
                Aside aside = all.asides().get(k);
                ListLine taken = taken(aside, names.get(-1 - k));
                if (aside.before() == i && taken != null) {
                    lines.add(taken);
                } else if (aside.before() == i) {
                    left.add(new Aside(aside.text(), lines.size(), aside.choices()));
                }
            }
            if (i < all.lines().size() && !LEFT_OUT.equals(names.get(i))) {
                lines.add(all.lines().get(i));
            }
        }
        return new FigureList(lines, left, all.findings());
    }
}

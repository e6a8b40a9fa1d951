package crowdline.console.keys;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Zoom;
import java.awt.BasicStroke;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Paints what every key does, over the whole place. The keys go on working while it is shown. */
public final class KeysOverlay extends Painted<KeysOverlay.Sheet> {
    private static final double LEARNED_PX = 46;
    /** Keys take no more of a column than this share. */
    private static final double MOST_KEYS = 0.4;

    /** What stands in the row of another, or is told there. */
    private static final Set<Command> BESIDE_ANOTHER = Set.of(
            Command.FACT_2,
            Command.FACT_3,
            Command.LISTEN,
            Command.SMALLER,
            Command.TOUR_BACK,
            Command.SECOND_WINDOW,
            Command.SECOND_FULL,
            Command.SECOND_THEME,
            Command.SECOND_SPEAKER,
            Command.SECOND_LARGER,
            Command.SECOND_SMALLER);

    /** From this zoom on a sheet of so many keys is two pages. Tuned by looking. */
    private static final double TWO_PAGES = 1.5;

    private static final int LEAST_TURNED = 12;
    private static final String TURN = "They still work while this is open. F1 goes on, Esc closes it.";

    /** The share of a row that is the name of a command; what it does stands under it. */
    private static final double LABEL = 0.5;

    private static final int HELP_LINES = 2;

    /**
     * What is on it.
     *
     * @param title whose keys these are
     * @param how how to go on from here
     * @param entries the commands
     * @param learned what pedals and remotes do, one sentence; empty if nothing was learned
     */
    public record Sheet(String title, String how, List<Entry> entries, String learned) {
        public Sheet {
            entries = List.copyOf(entries);
        }

        /** The same in as many pages as large letters need; all rows of one page are larger by what the other took. */
        public List<Sheet> pages(Zoom zoom) {
            int half = (entries.size() + 1) / 2;
            return zoom.factor() < TWO_PAGES || entries.size() < LEAST_TURNED
                    ? List.of(this)
                    : List.of(
                            new Sheet(title + ", 1 of 2", TURN, entries.subList(0, half), ""),
                            new Sheet(title + ", 2 of 2", how, entries.subList(half, entries.size()), learned));
        }
    }

    /** One command: its keys in words, its name, what it does. */
    public record Entry(List<String> keys, String label, String help) {
        public Entry {
            keys = List.copyOf(keys);
        }
    }

    public KeysOverlay(Appearance appearance) {
        super("Keys", appearance);
        show(sheet(Command.Scope.LIVE, Map.of(), ""));
    }

    /**
     * The keys of a place, made from the table of commands, so that they cannot differ from what the keys do.
     *
     * @param place the place
     * @param taken keys that were learned for other commands than their own
     * @param learned what pedals and remotes do, one sentence; empty if nothing was learned
     */
    public static Sheet sheet(Command.Scope place, Map<String, Command> taken, String learned) {
        String name = switch (place) {
            case PREPARE -> Command.PREPARE.label();
            case WORDS -> Command.WORDS.label();
            case WALK -> Command.WALK.label();
            case DEBRIEF -> Command.DEBRIEF.label();
            case GLOSSARY -> Command.GLOSSARY.label();
            default -> Command.LIVE.label();
        };
        return new Sheet(
                "Keys in " + name,
                "They still work while this is open. F1 goes on to the keys that work everywhere, Esc closes it.",
                entries(place, taken),
                learned);
    }

    /**
     * The keys that work in a place and in every other.
     *
     * @param place the place
     * @param taken keys that were learned for other commands than their own
     */
    public static Sheet everywhere(Command.Scope place, Map<String, Command> taken) {
        List<Entry> everywhere = new ArrayList<>(entries(Command.Scope.FIRST, taken));
        everywhere.addAll(entries(Command.Scope.WINDOW, taken));
        if (place != Command.Scope.LIVE) {
            everywhere.addAll(entries(Command.Scope.EDIT, taken));
        }
        return new Sheet("Keys everywhere", "They still work while this is open. F1 or Esc closes it.", everywhere, "");
    }

    private static List<Entry> entries(Command.Scope scope, Map<String, Command> taken) {
        List<Entry> entries = new ArrayList<>();
        for (Command command : Command.values()) {
            if (command == Command.FACT_1 && scope == command.scope()) {
                entries.add(new Entry(List.of("1", "2", "3"), "Fact", "Take the fact with that number"));
            } else if (command == Command.LARGER && scope == command.scope()) {
                List<String> keys = both(command, Command.SMALLER, taken);
                entries.add(new Entry(keys, "Larger, smaller", "Everything on the screen"));
            } else if (command == Command.FULL_SCREEN && scope == command.scope()) {
                List<String> keys = both(command, Command.SECOND_WINDOW, taken);
                entries.add(new Entry(keys, "Full screen, second", "Fill the screen; a second window"));
            } else if (command == Command.PACE && scope == command.scope()) {
                List<String> keys = both(command, Command.LISTEN, taken);
                entries.add(new Entry(keys, "Pace, listen", "Whose pace; Live hears you"));
            } else if (command.scope() == scope && !isBesideAnother(command)) {
                entries.add(new Entry(shown(command, taken), command.label(), command.help()));
            }
        }
        return entries;
    }

    private static List<String> both(Command command, Command beside, Map<String, Command> taken) {
        return Stream.of(command, beside)
                .flatMap(each -> shown(each, taken).stream().limit(1))
                .toList();
    }

    private static boolean isBesideAnother(Command command) {
        return BESIDE_ANOTHER.contains(command) || command.isInRunningOrder();
    }

    /** The keys worth showing: not the second way to type a plus sign. */
    private static List<String> shown(Command command, Map<String, Command> taken) {
        return RemoteKey.left(command, taken).stream()
                .filter(k -> !k.startsWith("NUMPAD") && !k.endsWith("EQUALS") && !k.equals("ctrl T"))
                .map(Keys::inWords)
                .distinct()
                .toList();
    }

    @Override
    protected String spoken(Sheet v) {
        return v.entries().stream()
                        .map(e -> String.join(" or ", e.keys()) + ": " + e.label() + ".")
                        .collect(Collectors.joining(" "))
                + (v.learned().isEmpty() ? "" : " " + v.learned());
    }

    @Override
    protected void paint(Pen pen, Sheet v, Box box) {
        Box inner = box.inset(pen.px(32), pen.px(18));
        Box top = inner.top(pen.px(40));
        TextBlock title = pen.line(v.title(), TextRole.NEXT, true, top);
        pen.midway(title, top, pen.palette().text());
        Box how = top.rightOf(title.widthPx() + pen.px(24));
        pen.midway(
                pen.line(v.how(), TextRole.SMALL, false, how),
                how,
                pen.palette().soft());
        Box rest = inner.belowTop(pen.px(52));
        if (!v.learned().isEmpty()) {
            Box foot = rest.bottom(pen.px(LEARNED_PX));
            TextBlock learned = pen.lines(v.learned(), TextRole.SMALL, true, foot.belowTop(pen.px(6)), 2);
            pen.fill(foot.top(pen.px(1)), pen.palette().rule());
            pen.midway(learned, foot.belowTop(pen.px(6)), pen.palette().text());
            rest = rest.aboveBottom(foot.h() + pen.px(4));
        }
        columns(pen, v.entries(), rest);
    }

    /** In two columns, read down the left one first. */
    private static void columns(Pen pen, List<Entry> entries, Box box) {
        int half = (entries.size() + 1) / 2;
        Box rest = box.left(box.w() / 2 - pen.px(20));
        double each = Math.min(rest.h() / half, pen.px(50) * zoom(pen));
        double gap = pen.px(14);
        // One size for every row, the largest at which the longest fits.
        double keyPx = keyPx(pen, entries, new Box(0, 0, rest.w() * MOST_KEYS, each));
        double keysWidth = longest(pen, entries, keyPx, each);
        double wordsWidth = rest.w() - keysWidth - gap;
        double labelPx =
                allPx(pen, entries.stream().map(Entry::label), true, new Box(0, 0, wordsWidth, each * LABEL), 1);
        double helpPx = allPx(
                pen,
                entries.stream().map(Entry::help),
                false,
                new Box(0, 0, wordsWidth, each * (1 - LABEL) - pen.px(3)),
                HELP_LINES);
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            Box column = i < half ? rest : box.right(rest.w());
            Box row = column.belowTop(i % half * each).top(each);
            pen.fill(row.top(pen.px(1)), pen.palette().rule());
            caps(pen, entry.keys(), keyPx, row.left(keysWidth));
            Box words = row.right(wordsWidth);
            Box label = words.top(each * LABEL);
            pen.midway(
                    pen.at(entry.label(), true, labelPx, label, 1),
                    label,
                    pen.palette().text());
            Box help = words.belowTop(each * LABEL).aboveBottom(pen.px(3));
            pen.midway(
                    pen.at(entry.help(), false, helpPx, help, HELP_LINES),
                    help,
                    pen.palette().soft());
        }
    }

    private static double zoom(Pen pen) {
        return pen.appearance().zoom().factor();
    }

    /** The largest size at which each of these fits so many lines of a box. */
    private static double allPx(Pen pen, Stream<String> texts, boolean strong, Box box, int lines) {
        double most = pen.sizePx(TextRole.BODY) * 1.1;
        return texts.mapToDouble(
                        text -> block(pen, text, strong, most, box, lines).sizePx())
                .min()
                .orElse(most);
    }

    private static TextBlock block(Pen pen, String text, boolean strong, double mostPx, Box box, int mostLines) {
        return pen.block(List.of(text), strong ? pen.strong() : pen.plain(), mostPx, pen.leastPx(), box, mostLines);
    }

    private static double capPx(Pen pen, double rowPx) {
        return Math.min(rowPx * 0.66, pen.px(28) * zoom(pen));
    }

    /** How wide the keys of a row are. */
    private static double capsPx(Pen pen, List<String> keys, double sizePx, double rowPx) {
        double high = capPx(pen, rowPx);
        return keys.stream()
                .mapToDouble(key -> Math.max(high, pen.widthPx(key, true, sizePx) + high * 0.6) + pen.px(6))
                .sum();
    }

    /** The largest size at which the keys of every row fit their place. */
    private static double keyPx(Pen pen, List<Entry> entries, Box row) {
        double sizePx = Math.min(pen.sizePx(TextRole.BODY), capPx(pen, row.h()) * 0.8);
        while (sizePx > pen.leastPx() && longest(pen, entries, sizePx, row.h()) > row.w()) {
            sizePx -= 0.5;
        }
        return Math.max(pen.leastPx(), sizePx);
    }

    private static double longest(Pen pen, List<Entry> entries, double sizePx, double rowPx) {
        return entries.stream()
                .mapToDouble(e -> capsPx(pen, e.keys(), sizePx, rowPx))
                .max()
                .orElse(0);
    }

    private static void caps(Pen pen, List<String> keys, double sizePx, Box box) {
        double height = capPx(pen, box.h());
        double x = box.x();
        for (String key : keys) {
            double room = Math.max(0, box.maxX() - x - height * 0.6);
            Box inside = new Box(x, box.midY() - height / 2, room, height);
            TextBlock word = pen.at(key, true, sizePx, inside, 1);
            if (!word.whole()) {
                return;
            }
            double width = Math.max(height, word.widthPx() + height * 0.6);
            pen.surface().setColor(pen.palette().soft());
            pen.surface().setStroke(new BasicStroke((float) pen.px(1.3)));
            pen.surface()
                    .draw(new RoundRectangle2D.Double(x, box.midY() - height / 2, width, height, pen.px(7), pen.px(7)));
            word.draw(
                    pen.surface(),
                    x + (width - word.widthPx()) / 2,
                    box.midY() - word.heightPx() / 2,
                    pen.palette().text());
            x += width + pen.px(6);
        }
    }
}

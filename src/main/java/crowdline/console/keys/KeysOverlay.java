package crowdline.console.keys;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.BasicStroke;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Paints what every key does, over the whole place. The keys go on working while it is shown. */
public final class KeysOverlay extends Painted<KeysOverlay.Sheet> {
    private static final double LEARNED_PX = 46;

    /**
     * What is on it.
     *
     * @param title the headline
     * @param place the place whose keys these are
     * @param here commands of that place
     * @param window commands of the window
     * @param learned what pedals and remotes do, one sentence; empty if nothing was learned
     */
    public record Sheet(String title, String place, List<Entry> here, List<Entry> window, String learned) {
        public Sheet {
            here = List.copyOf(here);
            window = List.copyOf(window);
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
     * The sheet made from the table of commands, so that it cannot differ from what the keys do.
     *
     * @param place the place whose keys stand beside those of the window
     * @param taken keys that were learned for other commands than their own
     * @param learned what pedals and remotes do, one sentence; empty if nothing was learned
     */
    public static Sheet sheet(Command.Scope place, Map<String, Command> taken, String learned) {
        String name = switch (place) {
            case WORDS -> Command.WORDS.label();
            case WALK -> Command.WALK.label();
            case DEBRIEF -> Command.DEBRIEF.label();
            case GLOSSARY -> Command.GLOSSARY.label();
            default -> Command.LIVE.label();
        };
        List<Entry> everywhere = new ArrayList<>(entries(Command.Scope.FIRST, taken));
        everywhere.addAll(entries(Command.Scope.WINDOW, taken));
        return new Sheet(
                "The keys still work while this is open. F1 or Esc closes it.",
                name,
                entries(place, taken),
                everywhere,
                learned);
    }

    private static List<Entry> entries(Command.Scope scope, Map<String, Command> taken) {
        List<Entry> entries = new ArrayList<>();
        for (Command command : Command.values()) {
            if (command == Command.FACT_1 && scope == command.scope()) {
                entries.add(new Entry(List.of("1", "2", "3"), "Fact", "Take the fact with that number"));
            } else if (command.scope() == scope && command != Command.FACT_2 && command != Command.FACT_3) {
                entries.add(new Entry(shown(command, taken), command.label(), command.help()));
            }
        }
        return entries;
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
        return Stream.concat(v.here().stream(), v.window().stream())
                        .map(e -> String.join(" or ", e.keys()) + ": " + e.label() + ".")
                        .collect(Collectors.joining(" "))
                + (v.learned().isEmpty() ? "" : " " + v.learned());
    }

    @Override
    protected void paint(Pen pen, Sheet v, Box box) {
        Box inner = box.inset(pen.px(32), pen.px(18));
        Box top = inner.top(pen.px(40));
        TextBlock title = pen.line("Keys", TextRole.NEXT, true, top);
        pen.midway(title, top, pen.palette().text());
        Box how = top.rightOf(title.widthPx() + pen.px(24));
        pen.midway(
                pen.line(v.title(), TextRole.SMALL, false, how),
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
        double left = rest.w() * 0.56;
        column(pen, v.place(), v.here(), rest.left(left - pen.px(20)), 0.32);
        column(pen, "Everywhere", v.window(), rest.rightOf(left + pen.px(20)), 0.27);
    }

    private static void column(Pen pen, String caption, List<Entry> entries, Box box, double keysShare) {
        Box top = box.top(pen.px(26));
        pen.midway(
                pen.line(caption, TextRole.VALUE, true, top), top, pen.palette().text());
        Box rest = box.belowTop(pen.px(32));
        double each = Math.min(rest.h() / entries.size(), pen.px(46));
        Box words = new Box(0, 0, rest.w() * (1 - keysShare) - pen.px(14), each - pen.px(4));
        double labelWidth = words.w() * 0.38;
        double helpWidth = words.w() * 0.6;
        // One size for every row, the largest at which the longest fits.
        double labelPx = pen.sizePx(TextRole.SMALL);
        double helpPx = pen.sizePx(TextRole.BODY);
        for (Entry entry : entries) {
            labelPx = Math.min(
                    labelPx,
                    block(pen, entry.label(), true, labelPx, words.left(labelWidth), 1)
                            .sizePx());
            helpPx = Math.min(
                    helpPx,
                    block(pen, entry.help(), false, helpPx, words.left(helpWidth), 2)
                            .sizePx());
        }
        double keyPx = keyPx(pen, entries, new Box(0, 0, rest.w() * keysShare, each));
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            Box row = rest.belowTop(i * each).top(each);
            pen.fill(row.top(pen.px(1)), pen.palette().rule());
            caps(pen, entry.keys(), keyPx, row.left(row.w() * keysShare));
            Box label = row.rightOf(row.w() * keysShare + pen.px(14)).left(labelWidth);
            pen.midway(
                    block(pen, entry.label(), true, labelPx, label, 1),
                    label,
                    pen.palette().text());
            Box help = row.right(helpWidth);
            pen.midway(
                    block(pen, entry.help(), false, helpPx, help, 2),
                    help,
                    pen.palette().text());
        }
    }

    private static TextBlock block(Pen pen, String text, boolean strong, double mostPx, Box box, int mostLines) {
        return pen.block(List.of(text), strong ? pen.strong() : pen.plain(), mostPx, pen.leastPx(), box, mostLines);
    }

    private static double capPx(Pen pen, Box row) {
        return Math.min(row.h() * 0.66, pen.px(28));
    }

    /** The largest size at which the keys of every row fit their place. */
    private static double keyPx(Pen pen, List<Entry> entries, Box row) {
        double high = capPx(pen, row);
        double sizePx = Math.min(pen.sizePx(TextRole.BODY), high * 0.8);
        for (Entry entry : entries) {
            double caps = entry.keys().size() * (high * 0.6 + pen.px(6));
            double words = entry.keys().stream()
                    .mapToDouble(key -> pen.widthPx(key, true, 100) / 100)
                    .sum();
            sizePx = Math.min(sizePx, (row.w() - caps) / words);
        }
        return Math.max(pen.leastPx(), sizePx);
    }

    private static void caps(Pen pen, List<String> keys, double sizePx, Box box) {
        double height = capPx(pen, box);
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

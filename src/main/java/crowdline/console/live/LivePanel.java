package crowdline.console.live;

import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.DutyRows;
import crowdline.console.live.day.OrderRows;
import crowdline.console.live.day.OrderView;
import crowdline.console.live.day.ToldLine;
import crowdline.console.live.find.FindPanel;
import crowdline.console.live.next.NextRow;
import crowdline.console.live.now.NowRow;
import crowdline.console.live.now.NowView;
import crowdline.console.live.row.ListRows;
import crowdline.console.live.say.SayRow;
import crowdline.console.live.strip.StripRow;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Window;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Live place: four rows, each with its share of the height whatever they hold. */
public final class LivePanel extends JPanel {
    private static final double STRIP = 0.07;
    /** What the strip needs to be read at arm's length, where a practice's sky leaves the rows little height. */
    private static final double LEAST_STRIP_PX = 46;

    private static final double MOST_STRIP = 0.1;
    private static final double NOW = 0.33;
    private static final double SAY = 0.39;
    private static final double NEXT = 0.21;
    /** The room the design was drawn for: a window of 1280 by 800 less its menu bar and caution line at the largest zoom. */
    private static final double DESIGNED_WIDTH_PX = 1280;

    private static final double DESIGNED_HEIGHT_PX = 700;
    /** What the bars above and below the rows take at the largest zoom. */
    private static final double BARS_PX = 99;

    private final ToldLine told;
    private final NoteRow note;
    private final ListRows<OrderView.Row> order;
    private final ListRows<DutiesView.Row> duties;
    private final FindPanel find;
    private final StripRow strip;
    private final NowRow now;
    private final SayRow say;
    private final NextRow next;
    private transient Appearance appearance;
    private transient @Nullable LiveView shown;

    /** One in which no note is written. */
    public LivePanel(Appearance appearance) {
        this(appearance, words -> {}, () -> {});
    }

    /**
     * One that is written in.
     *
     * @param noted told the words of a note when they are finished; empty if none were wanted
     * @param keysBack gives the keys to the window again, when what had them is hidden
     */
    LivePanel(Appearance appearance, Consumer<String> noted, Runnable keysBack) {
        super(null);
        this.appearance = appearance;
        strip = new StripRow(appearance);
        now = new NowRow(appearance);
        say = new SayRow(appearance);
        next = new NextRow(appearance);
        told = new ToldLine(appearance);
        note = new NoteRow(appearance, noted);
        find = new FindPanel(appearance, keysBack);
        order = OrderRows.in(appearance);
        duties = DutyRows.in(appearance);
        add(told);
        add(note);
        add(find);
        add(order);
        add(duties);
        add(strip);
        add(now);
        add(say);
        add(next);
        setPreferredSize(new Dimension((int) DESIGNED_WIDTH_PX, (int) DESIGNED_HEIGHT_PX));
        getAccessibleContext().setAccessibleName("Live");
    }

    /** Shows a view; rows whose part has not changed are not painted again. */
    public void show(LiveView view) {
        tell(view.told());
        shown = view;
        showStrip();
        now.show(view.now());
        say.show(view.say());
        next.show(view.next());
    }

    /** What lies over what is flown hides its name and its time, which stand in the strip then. */
    private void showStrip() {
        LiveView view = shown;
        if (view != null) {
            boolean hidden = find.isVisible() || order.isVisible() || duties.isVisible();
            NowView flown = view.now();
            strip.show(
                    hidden && !flown.left().isEmpty()
                            ? view.strip().flying(flown.name() + ", " + flown.left())
                            : view.strip());
        }
    }

    private void tell(@Nullable Mark mark) {
        if (mark != null) {
            told.show(mark);
            placeTold();
        }
        if (told.isVisible() != (mark != null)) {
            told.setVisible(mark != null);
        }
    }

    /** It lies over the rows while it is shown, so that none of them moves. */
    @Override
    public boolean isOptimizedDrawingEnabled() {
        return !told.isVisible() && !note.isVisible() && !find.isVisible() && !order.isVisible() && !duties.isVisible();
    }

    /** Where something is looked up, which lies over what is flown. */
    FindPanel find() {
        return find;
    }

    /** Shows the running order over what is flown, or hides it. */
    void showOrder(@Nullable OrderView view) {
        showOver(order, view == null ? null : view.rows(), view == null ? 0 : view.first());
    }

    /** Shows the duties of the day there, or hides them. */
    void showDuties(@Nullable DutiesView view) {
        showOver(duties, view == null ? null : view.rows(), 0);
    }

    private <R extends ListRows.Row> void showOver(ListRows<R> over, @Nullable List<R> rows, int first) {
        if (rows != null) {
            boolean opens = !over.isVisible();
            over.show(rows, first);
            if (opens) {
                doLayout();
                over.validate();
                repaint();
            }
        } else if (over.isVisible()) {
            over.setVisible(false);
        }
        showStrip();
    }

    /** The running order, which lies over the rows while it is shown. */
    ListRows<OrderView.Row> order() {
        return order;
    }

    /** The duties of the day, likewise. */
    ListRows<DutiesView.Row> duties() {
        return duties;
    }

    /**
     * Opens the field in which a note is written.
     *
     * @param asks what is to be written, in a sentence
     * @param words what stands in it already, to be typed over or kept; empty for nothing
     */
    void openNote(String asks, String words) {
        note.open(asks, words);
        doLayout();
        note.validate();
        note.takeFocus();
        repaint();
    }

    /** Closes it without a word. */
    void closeNote() {
        note.close();
    }

    /** Goes on with the note where it was left. */
    void takeFocus() {
        note.takeFocus();
    }

    /** Changes colours and sizes. */
    public void wear(Appearance worn) {
        appearance = worn;
        setBackground(worn.palette().ground());
        note.wear(worn);
        order.wear(worn);
        duties.wear(worn);
        doLayout();
    }

    @Override
    public void doLayout() {
        int w = getWidth();
        int h = getHeight();
        double room = roomPx();
        double scale = scale();
        double most = Math.max(STRIP, Math.min(LEAST_STRIP_PX / room, MOST_STRIP));
        double rest = (1 - most) / (1 - STRIP);
        int a = (int) Math.round(h * most);
        int b = (int) Math.round(h * (most + NOW * rest));
        int c = (int) Math.round(h * (most + (NOW + SAY) * rest));
        strip.setBounds(0, 0, w, a);
        now.setBounds(0, a, w, b - a);
        say.setBounds(0, b, w, c - b);
        next.setBounds(0, c, w, h - c);
        order.setBounds(0, a, w, b - a);
        duties.setBounds(0, a, w, b - a);
        find.setBounds(0, a, w, b - a);
        find.wear(appearance, scale);
        // Less one, since a row is a whole number of pixels.
        strip.room(room * most - 1);
        now.room(room * NOW * rest - 1);
        say.room(room * SAY * rest - 1);
        next.room(room * NEXT * rest - 1);
        placeTold();
        int noteHeight = Math.min(h, note.getPreferredSize().height);
        note.setBounds(0, h - noteHeight, w, noteHeight);
        strip.wear(appearance, Math.min(getWidth() / DESIGNED_WIDTH_PX, scale * most / STRIP));
        now.wear(appearance, scale);
        say.wear(appearance, scale);
        next.wear(appearance, scale);
    }

    /** The height there is at every zoom: what the bars take at the largest is left free before. */
    private double roomPx() {
        Container top = this;
        for (Container in = getParent(); in != null && !(in instanceof Window); in = in.getParent()) {
            top = in;
        }
        return top == this ? getHeight() : Math.min(getHeight(), Math.max(1, top.getHeight() - BARS_PX));
    }

    private double scale() {
        return Math.max(0.4, Math.min(getWidth() / DESIGNED_WIDTH_PX, roomPx() / DESIGNED_HEIGHT_PX));
    }

    private void placeTold() {
        told.wear(appearance, scale());
        int high = told.heightIn(getWidth());
        told.setBounds(0, getHeight() - high, told.widthIn(getWidth()), high);
    }
}

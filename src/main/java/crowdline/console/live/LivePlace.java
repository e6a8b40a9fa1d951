package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.console.live.find.FindPanel;
import crowdline.console.paint.Mark;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Live place: the rows, or the incident page in their stead, or how to open a show. */
public final class LivePlace extends JPanel implements PlaceScreen {
    private static final String ROWS = "rows";
    private static final String INCIDENT = "incident";
    private static final String ANNOUNCEMENTS = "announcements";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final LivePanel rows;
    private final UnderSky underSky;
    private final IncidentCard incident;
    private final AnnouncementCard announcements;
    private final LazyCard<EmptyShow.Shown, EmptyShow> empty;
    private final transient CommandTable commands;
    private transient @Nullable OnAir show;
    private transient @Nullable LiveView shown;
    private transient Function<@Nullable LiveView, @Nullable IncidentView> instead =
            view -> view == null ? null : view.incident();
    private final transient Runnable keysBack;
    private boolean writing;
    private transient @Nullable Command over;
    /** What the field that is open is for: an act that is put in after this one, or null for a note. */
    private transient @Nullable Consumer<String> putsIn;
    /** What was typed last for an act to be put in and named none. */
    private String refused = "";

    private Runnable asked = () -> {};
    /** None before the first is turned to. */
    private String card = "";

    /**
     * @param call calls the incident page
     * @param keysBack gives the keys to the window again, when what had them is hidden
     */
    public LivePlace(Appearance appearance, Ways ways, Runnable call, Runnable keysBack) {
        this.keysBack = keysBack;
        commands = CommandTable.of(Command.Scope.LIVE)
                .on(Command.INCIDENT_IN_LIVE, () -> !inIncident(), call)
                .on(Command.ASK_IN_LIVE, () -> !inIncident(), () -> asked.run())
                .on(Command.JOT, () -> !inIncident() && hasShow(), this::jot)
                .on(Command.LOOK_UP, () -> !inIncident() && hasShow(), this::lookUp)
                .on(Command.ANNOUNCE, () -> !inIncident() && hasShow(), this::announce)
                .on(Command.ORDER, () -> !inIncident() && hasShow(), () -> turn(Command.ORDER))
                .on(Command.DUTIES, () -> !inIncident() && hasShow(), () -> turn(Command.DUTIES))
                .on(Command.ORDER_UP, this::hasList, () -> listMoves(-1))
                .on(Command.ORDER_DOWN, this::hasList, () -> listMoves(1))
                .on(Command.PUT_IN_ACT, this::hasOrder, this::putIn)
                .rest(Command::isInRunningOrder, this::hasOrder, this::give)
                .rest(() -> !inIncident() && hasShow(), this::give)
                .filled();
        setLayout(cards);
        rows = new LivePanel(appearance, this::written, keysBack);
        incident = new IncidentCard(appearance);
        announcements = new AnnouncementCard(appearance, keysBack, this::refresh);
        empty = new LazyCard<>(appearance, a -> new EmptyShow(a, ways), EmptyShow::show, EmptyShow::wear);
        underSky = new UnderSky(rows);
        add(underSky, ROWS);
        add(incident, INCIDENT);
        add(announcements, ANNOUNCEMENTS);
        add(empty, EMPTY);
        setBackground(appearance.palette().ground());
        getAccessibleContext().setAccessibleName("Live");
    }

    /** From now on it shows this running show, or none. */
    public void run(@Nullable OnAir next) {
        show = next;
        shown = null;
        over = null;
        rows.showOrder(null);
        announcements.close();
        find().close();
        rows.showDuties(null);
        closeNote();
    }

    /** Shows this above the rows from now on, or nothing. */
    public void sky(@Nullable JComponent sky) {
        underSky.put(sky);
    }

    /** The running show, or null. */
    public @Nullable OnAir running() {
        return show;
    }

    /** Who knows the incident page that stands instead of a moment of Live. */
    public void insteadOf(Function<@Nullable LiveView, @Nullable IncidentView> page) {
        instead = page;
    }

    @Override
    public JComponent component() {
        return this;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    private void give(Command command) {
        OnAir now = show;
        LiveView view = shown;
        if (now != null && view != null) {
            now.carryOut(
                    command,
                    view.handles()
                            .withChosenAct(hasOrder() ? rows.order().chosenId() : null)
                            .withChosenDuty(
                                    hasList() && over == Command.DUTIES
                                            ? rows.duties().chosenId()
                                            : null));
            refresh();
        }
    }

    /** Told when somebody wants to know what is being flown. */
    public void onAsk(Runnable told) {
        asked = told;
    }

    private void jot() {
        LiveView now = shown;
        if (now != null && !writing) {
            give(Command.JOT);
            write(
                    "Noted at " + now.strip().hour()
                            + ". A few words if there is time: Enter keeps them, Esc goes on without.",
                    "");
        }
    }

    private void write(String asks, String words) {
        writing = true;
        rows.openNote(asks, words);
    }

    /** Whether a list of the day is open over what is flown. */
    private boolean hasList() {
        return over != null && !inIncident() && hasShow();
    }

    private boolean hasOrder() {
        return hasList() && over == Command.ORDER;
    }

    private void turn(Command list) {
        over = over == list ? null : list;
        refresh();
    }

    /** Closes the list of the day that is open; false if none is. */
    public boolean closeList() {
        Command open = over;
        if (open == null || !hasList()) {
            return false;
        }
        turn(open);
        return true;
    }

    private void listMoves(int by) {
        (hasOrder() ? rows.order() : rows.duties()).move(by);
    }

    private void putIn() {
        OnAir now = show;
        if (now != null && !writing) {
            String afterId = rows.order().chosenId();
            putsIn = words -> refused = now.putIn(words, afterId) ? "" : words;
            write(
                    "Its name and its minutes, such as: Fly-past, 5. Enter puts it in after the chosen act, Esc leaves"
                            + " it.",
                    refused);
        }
    }

    private void lookUp() {
        OnAir now = show;
        if (now != null) {
            rows.find().open(now::find);
        }
    }

    /** Where something is looked up. */
    public FindPanel find() {
        return rows.find();
    }

    /** Opens the announcements over whatever Live shows, the incident page too, if a show runs. */
    public void announce() {
        OnAir now = show;
        if (now == null) {
            return;
        }
        Announcing words = now.announcing();
        if (words.all().isEmpty() && !inIncident()) {
            // An empty page would hide the act for nothing.
            give(Command.ANNOUNCE);
        } else {
            announcements.open(words);
        }
    }

    /** The announcements, which lie over everything else while they are open. */
    public AnnouncementCard announcements() {
        return announcements;
    }

    private void written(String words) {
        writing = false;
        OnAir now = show;
        Consumer<String> into = putsIn;
        putsIn = null;
        if (now != null && !words.isEmpty()) {
            (into == null ? (Consumer<String>) now::write : into).accept(words);
            refresh();
        }
        keysBack.run();
    }

    /** Leaves the note that is being written with its time alone; false if none is. */
    public boolean closeNote() {
        boolean open = writing;
        writing = false;
        putsIn = null;
        if (open) {
            rows.closeNote();
            keysBack.run();
        }
        return open;
    }

    /** Goes on with a note that was left half written. */
    @Override
    public boolean takeFocus() {
        if (announcements.takeFocus() || (!inIncident() && find().takeFocus())) {
            return true;
        }
        if (writing && !inIncident()) {
            rows.takeFocus();
            return true;
        }
        return false;
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public boolean needsNoFocus() {
        return true;
    }

    @Override
    public void refresh() {
        OnAir now = show;
        LiveView view = now == null ? null : now.view();
        show(view, instead.apply(view));
    }

    /** What Live warns of at the moment. */
    public List<Mark> warnings() {
        LiveView view = shown;
        return view == null ? List.of() : view.warnings();
    }

    /** Shows a moment of Live, with the incident page if it is open then. */
    public void show(@Nullable LiveView view) {
        show(view, view == null ? null : view.incident());
    }

    /**
     * Shows a moment, or how to open a show if there is none.
     *
     * @param now the incident page, which stands in place of both, or null
     */
    public void show(@Nullable LiveView view, @Nullable IncidentView now) {
        shown = view;
        announcements.refresh(view);
        if (now != null) {
            showIncident(now);
            return;
        }
        incident.leave();
        if (view == null) {
            turnTo(EMPTY);
        } else {
            rows.show(view);
            OnAir running = show;
            rows.showOrder(over == Command.ORDER && running != null ? running.order() : null);
            rows.showDuties(over == Command.DUTIES && running != null ? running.duties() : null);
            turnTo(announcements.isOpen() ? ANNOUNCEMENTS : ROWS);
        }
    }

    /** Shows the running order of a moment over it. */
    public void showOrder(OrderView order) {
        rows.showOrder(order);
    }

    /** Shows the duties of a moment over it. */
    public void showDuties(DutiesView duties) {
        rows.showDuties(duties);
    }

    /** Shows the incident page, from its first words if it was not shown already. */
    public void showIncident(IncidentView now) {
        boolean begins = incident.show(now);
        turnTo(announcements.isOpen() ? ANNOUNCEMENTS : INCIDENT);
        if (begins) {
            incident.begin();
        }
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        empty.show(shown);
    }

    public boolean inIncident() {
        return incident.isOpen();
    }

    public boolean hasShow() {
        return card.equals(ROWS) || (announcements.isOpen() && !inIncident());
    }

    /**
     * Takes a key on the incident page: one that moves through the words, or a letter of the word that leaves it.
     *
     * @return true if it completed the word
     */
    public boolean pressInIncident(KeyEvent event) {
        return incident.press(event);
    }

    @Override
    public void wear(Appearance appearance) {
        setBackground(appearance.palette().ground());
        rows.wear(appearance);
        announcements.wear(appearance);
        incident.wear(appearance);
        empty.wear(appearance);
    }

    private void turnTo(String next) {
        if (!next.equals(card)) {
            card = next;
            cards.show(this, next);
        }
    }
}

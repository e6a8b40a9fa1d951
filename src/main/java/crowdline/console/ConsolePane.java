package crowdline.console;

import crowdline.console.debrief.DebriefPlace;
import crowdline.console.edit.Editing;
import crowdline.console.foot.FootLine;
import crowdline.console.glossary.GlossaryPlace;
import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandActions;
import crowdline.console.keys.KeysOverlay;
import crowdline.console.live.LivePlace;
import crowdline.console.live.LiveView;
import crowdline.console.live.OnAir;
import crowdline.console.live.RunningStrip;
import crowdline.console.pedals.PedalCommands;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.Place;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.prepare.PreparePlace;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.WalkPlace;
import crowdline.console.words.WordsPlace;
import crowdline.storage.settings.LearnedButtons;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Everything in the window but its frame: the places, the foot line, and the sheet of keys over them. */
public final class ConsolePane extends JPanel {
    private static final String KEYS = "KEYS";

    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final transient Editing editing = new Editing();
    private final PreparePlace prepare;
    private final WordsPlace words;
    private final WalkPlace walk;
    private final LivePlace live;
    private final DebriefPlace debrief;
    private transient BooleanSupplier elsewhere = () -> false;
    private final GlossaryPlace glossary;
    private final transient Map<Place, PlaceScreen> screens = new EnumMap<>(Place.class);
    private final LazyCard<KeysOverlay.Sheet, KeysOverlay> keys;
    private final RunningStrip strip;
    private final FootLine foot;
    private final JPanel south = new JPanel(new BorderLayout());
    private final transient CommandActions actions;
    private transient Supplier<Set<Command>> ofTheWindow = () -> EnumSet.noneOf(Command.class);
    private transient Supplier<Set<Command>> besideLive = () -> EnumSet.noneOf(Command.class);
    private Place place = Place.PREPARE;
    private KeysShown keysShown = KeysShown.NONE;
    private final transient KeptFocus focus = new KeptFocus(this);
    /** The page of keys in front, and those that follow it. */
    private transient List<KeysOverlay.Sheet> keyPages = List.of();

    private transient LearnedButtons learned = LearnedButtons.NONE;
    private transient Appearance appearance;

    /** One where no file was ever open. */
    public ConsolePane(Appearance appearance, CommandActions actions, Action demo) {
        this(appearance, actions, demo, List::of);
    }

    /**
     * All places, and what stands around them.
     *
     * @param demo opens the demo show
     * @param again each opens a file that was open before
     */
    public ConsolePane(Appearance appearance, CommandActions actions, Action demo, Supplier<List<Action>> again) {
        super(new BorderLayout());
        this.appearance = appearance;
        this.actions = actions;
        Ways ways = new Ways(actions.of(Command.NEW_SHOW), actions.of(Command.OPEN), demo, again);
        Runnable keysBack = this::requestFocusInWindow;
        words = new WordsPlace(appearance, ways, editing, actions::of);
        prepare = new PreparePlace(appearance, ways, editing, actions::of);
        walk = new WalkPlace(appearance, ways, keysBack);
        live = new LivePlace(
                appearance, ways, () -> actions.of(Command.INCIDENT).give(), keysBack);
        debrief = new DebriefPlace(appearance, ways);
        glossary = new GlossaryPlace(appearance, editing, keysBack);
        screens.putAll(Map.of(
                Place.PREPARE, prepare,
                Place.WORDS, words,
                Place.WALK, walk,
                Place.LIVE, live,
                Place.DEBRIEF, debrief,
                Place.GLOSSARY, glossary));
        live.onAsk(() -> {
            actions.of(Command.GLOSSARY).give();
            glossary.askAnew();
        });
        words.onExplain(word -> {
            actions.of(Command.GLOSSARY).give();
            glossary.write(word, () -> {
                actions.of(Command.WORDS).give();
                SwingUtilities.invokeLater(words::writeOn);
            });
        });
        words.onChange(this::allow);
        glossary.onChange(this::allow);
        prepare.onChange(this::allow);
        debrief.onChange(() -> {
            allow();
            keepFocus();
        });
        keys = new LazyCard<>(appearance, KeysOverlay::new, KeysOverlay::show, (k, a) -> k.wear(a, keysScale()));
        foot = new FootLine(appearance, actions.of(Command.INCIDENT), this::inLive, this::inIncident);
        screens.forEach((each, screen) -> stage.add(screen.component(), each.name()));
        stage.add(keys, KEYS);
        strip = new RunningStrip(appearance, live::running, this::inLive);
        add(strip, BorderLayout.NORTH);
        add(stage, BorderLayout.CENTER);
        south.add(foot.row(), BorderLayout.SOUTH);
        add(south, BorderLayout.SOUTH);
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Crowdline");
        colour(appearance);
    }

    /** A row between the places and the foot line, which has no room while it is not visible. */
    void under(JComponent row) {
        south.add(row, BorderLayout.CENTER);
    }

    /**
     * What can be given of the commands of the window, asked whenever something has changed.
     *
     * @param steps those that are none of Live's
     */
    void allowing(Supplier<Set<Command>> possible, Supplier<Set<Command>> steps) {
        ofTheWindow = possible;
        besideLive = steps;
    }

    /** The place in front. */
    public Place place() {
        return place;
    }

    Appearance appearance() {
        return appearance;
    }

    /** The show that is edited. */
    public Editing editing() {
        return editing;
    }

    /** The Prepare place. */
    public PreparePlace prepare() {
        return prepare;
    }

    /** The Words place. */
    public WordsPlace words() {
        return words;
    }

    /** The Walk through place. */
    public WalkPlace walk() {
        return walk;
    }

    /** The Live place. */
    public LivePlace live() {
        return live;
    }

    /** The Debrief place. */
    public DebriefPlace debrief() {
        return debrief;
    }

    /** The Glossary. */
    public GlossaryPlace glossary() {
        return glossary;
    }

    /** The foot line. */
    public FootLine foot() {
        return foot;
    }

    boolean keysShown() {
        return keysShown != KeysShown.NONE;
    }

    private PlaceScreen screen() {
        return screen(place);
    }

    private PlaceScreen screen(Place which) {
        PlaceScreen screen = screens.get(which);
        if (screen == null) {
            throw new IllegalStateException("nothing is shown of " + which);
        }
        return screen;
    }

    /** @param other whether what is planned to be said is also on another screen */
    void alsoInSight(BooleanSupplier other) {
        elsewhere = other;
    }

    /** Turns to a place. */
    public void go(Place next) {
        if (next != place) {
            focus.leave(screen());
        }
        if (place == Place.PREPARE && next == Place.WORDS) {
            words.comeFrom(prepare.chosenPlace());
            focus.forget(words);
        } else if (place == Place.PREPARE && next == Place.WALK) {
            walk.comeFrom(prepare.chosenPlace().actId());
        } else if (place == Place.WORDS && next == Place.WALK) {
            walk.comeFrom(words.chosenPlace().actId());
        }
        place = next;
        keysShown = KeysShown.NONE;
        keyPages = List.of();
        turn();
    }

    /** The place in front has been gone to; whether it moves with the clock. */
    boolean arrived() {
        screen().arrive();
        return screen().moves();
    }

    /** Carries out a command of a place, whichever is in front. */
    void carryOut(Command command) {
        screen(Place.of(command.scope())).commands().carryOut(command);
        shown();
    }

    /** Shows the present moment of the place in front. */
    void refresh() {
        screen().refresh();
        shown();
    }

    /** Shows what follows from what the place shows. */
    private void shown() {
        OnAir running = live.running();
        if (running != null) {
            boolean inLive =
                    place == Place.LIVE && !keysShown() && !live.announcements().isOpen();
            running.inSight(inLive || elsewhere.getAsBoolean());
        }
        foot.warn(live.warnings());
        if (inIncident() && keysShown()) {
            keysShown = KeysShown.NONE;
            turn();
        } else {
            allow();
        }
    }

    /** Shows a sheet of keys over the place in front, or none. */
    public void showKeys(KeysShown shown) {
        if (!keysShown()) {
            focus.leaveForKeys();
        }
        boolean inLive = place.scope() == Command.Scope.LIVE;
        Map<String, Command> taken = inLive ? PedalCommands.keys(learned) : Map.of();
        KeysOverlay.Sheet all = shown == KeysShown.EVERYWHERE
                ? KeysOverlay.everywhere(place.scope(), taken)
                : KeysOverlay.sheet(place.scope(), taken, inLive ? PedalCommands.inWords(learned) : "");
        keyPages = List.copyOf(all.pages(appearance.zoom()));
        keys.show(keyPages.get(0));
        keysShown = shown;
        turn();
    }

    /** Shows the next page of keys: those of the place, those of every place, none again. */
    void turnKeys() {
        if (keyPages.size() > 1) {
            keyPages = keyPages.subList(1, keyPages.size());
            keys.show(keyPages.get(0));
        } else {
            showKeys(keysShown.next());
        }
    }

    /** What pedals and remotes do, for the sheet of keys. */
    void showLearned(LearnedButtons buttons) {
        learned = buttons;
    }

    /** Shows a moment of Live, with the incident page if it is open then. */
    public void showLive(@Nullable LiveView view) {
        live.show(view);
        shown();
    }

    /** Turns to the incident page. */
    void showIncident(IncidentView page) {
        live.showIncident(page);
        go(Place.LIVE);
    }

    /** Shows the show at a glance. */
    public void showPrepare(PrepareView view) {
        prepare.show(view);
        words.hasShow();
        turn();
    }

    /** What is said wherever a show would be. */
    void showEmpty(EmptyShow.Shown shown) {
        screens.values().forEach(screen -> screen.showEmpty(shown));
    }

    private boolean inLive() {
        return place == Place.LIVE;
    }

    /** Whether the incident page is in front. */
    boolean inIncident() {
        return inLive() && live.inIncident();
    }

    void wear(Appearance next) {
        appearance = next;
        colour(next);
        screens.values().forEach(screen -> screen.wear(next));
        keys.wear(next);
        if (keysShown()) {
            showKeys(keysShown);
        }
        strip.wear(next);
        foot.dress(next);
        revalidate();
        repaint();
    }

    private void colour(Appearance worn) {
        setBackground(worn.palette().ground());
        stage.setBackground(worn.palette().ground());
    }

    @Override
    public void doLayout() {
        super.doLayout();
        keys.ifMade(k -> k.rescale(keysScale()));
    }

    private double keysScale() {
        // The sheet holds so much that its own words leave the zoom little room; they shrink to fit where they must.
        return Math.max(0.5, Math.min(stage.getWidth() / 1280.0, stage.getHeight() / 736.0));
    }

    /** What had the focus may be hidden now, and a window in which nothing has the focus hears no keys. */
    void keepFocus() {
        if (keysShown()) {
            focus.keepOnKeys();
        } else {
            focus.keep(screen());
        }
    }

    private void turn() {
        cards.show(stage, keysShown() ? KEYS : place.name());
        strip.look();
        SwingUtilities.invokeLater(this::keepFocus);
        allow();
    }

    /** What can be given follows from the place in front and from the window. */
    void allow() {
        Set<Command> possible = EnumSet.copyOf(screen().possible());
        possible.addAll(ofTheWindow.get());
        if (!inLive()) {
            possible.addAll(besideLive.get());
        }
        actions.allow(possible);
        foot.show();
    }
}

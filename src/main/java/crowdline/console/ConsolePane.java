package crowdline.console;

import crowdline.console.debrief.DebriefPanel;
import crowdline.console.debrief.DebriefView;
import crowdline.console.foot.FootLine;
import crowdline.console.glossary.GlossaryPanel;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandActions;
import crowdline.console.keys.KeysOverlay;
import crowdline.console.live.LivePlace;
import crowdline.console.live.LiveView;
import crowdline.console.passes.PassesHost;
import crowdline.console.pedals.PedalCommands;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.Place;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.prepare.PreparePanel;
import crowdline.console.prepare.PrepareView;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.WalkPlace;
import crowdline.console.walk.WalkView;
import crowdline.console.words.WordsPanel;
import crowdline.storage.settings.LearnedButtons;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Everything in the window but its frame: the places, the foot line, and the sheet of keys over them. */
public final class ConsolePane extends JPanel {
    private static final String NO_SHOW = "NO_SHOW";
    private static final String KEYS = "KEYS";
    /** What changes the look of the incident page, or closes the console, does not take it from the front. */
    private static final Set<Command> LEFT_IN_INCIDENT =
            EnumSet.of(Command.FULL_SCREEN, Command.QUIT, Command.THEME, Command.LARGER, Command.SMALLER);

    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final LivePlace live;
    private final LazyCard<PrepareView, PreparePanel> prepare;
    private final WordsPanel words;
    private final LazyCard<EmptyShow.Shown, EmptyShow> empty;
    private final WalkPlace walk;
    private final PlaceOrEmpty<DebriefView, DebriefPanel> debrief;
    private final LazyCard<GlossaryView, GlossaryPanel> glossary;
    private final LazyCard<KeysOverlay.Sheet, KeysOverlay> keys;
    private final FootLine foot;
    private final transient CommandActions actions;
    private Place place = Place.PREPARE;
    private boolean prepared;
    private boolean keysShown;
    private transient PassesHost passes = PassesHost.NONE;
    private boolean drilling;
    private transient LearnedButtons learned = LearnedButtons.NONE;
    private transient Appearance appearance;

    public ConsolePane(Appearance appearance, CommandActions actions, Action demo) {
        super(new BorderLayout());
        this.appearance = appearance;
        this.actions = actions;
        Action open = actions.of(Command.OPEN);
        live = new LivePlace(appearance, open, demo);
        prepare = new LazyCard<>(
                appearance, a -> new PreparePanel(a, () -> passes), PreparePanel::show, PreparePanel::wear);
        words = new WordsPanel(appearance);
        words.onChange(this::allow);
        empty = new LazyCard<>(appearance, a -> new EmptyShow(a, open, demo), EmptyShow::show, EmptyShow::wear);
        walk = new WalkPlace(appearance, open, demo);
        debrief = new PlaceOrEmpty<>(
                "Debrief",
                appearance,
                new LazyCard<>(appearance, DebriefPanel::new, DebriefPanel::show, DebriefPanel::wear),
                open,
                demo);
        glossary = new LazyCard<>(appearance, GlossaryPanel::new, GlossaryPanel::show, GlossaryPanel::wear);
        keys = new LazyCard<>(appearance, KeysOverlay::new, KeysOverlay::show, (k, a) -> k.wear(a, keysScale()));
        foot = new FootLine(appearance, actions.of(Command.INCIDENT), this::inLive, this::inIncident);
        stage.add(prepare, Place.PREPARE.name());
        stage.add(words, Place.WORDS.name());
        stage.add(live, Place.LIVE.name());
        stage.add(walk.component(), Place.WALK.name());
        stage.add(debrief, Place.DEBRIEF.name());
        stage.add(glossary, Place.GLOSSARY.name());
        stage.add(empty, NO_SHOW);
        stage.add(keys, KEYS);
        add(stage, BorderLayout.CENTER);
        add(foot.row(), BorderLayout.SOUTH);
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Crowdline");
        colour(appearance);
    }

    public Place place() {
        return place;
    }

    Appearance appearance() {
        return appearance;
    }

    LivePlace live() {
        return live;
    }

    WalkPlace walk() {
        return walk;
    }

    PlaceOrEmpty<DebriefView, DebriefPanel> debrief() {
        return debrief;
    }

    public WordsPanel words() {
        return words;
    }

    boolean keysShown() {
        return keysShown;
    }

    public void go(Place next) {
        place = next;
        keysShown = false;
        turn();
    }

    /** Begins the drill of the glossary with this seed, or ends it. */
    public void drill(long seed) {
        glossary.ifMade(g -> {
            g.drill(seed);
            drilling = g.drilling();
        });
        requestFocusInWindow();
        allow();
    }

    public void ifGlossary(Consumer<GlossaryPanel> told) {
        glossary.ifMade(told);
    }

    public void showKeys(boolean shown) {
        boolean live = place.scope() == Command.Scope.LIVE;
        keys.show(KeysOverlay.sheet(
                place.scope(),
                live ? PedalCommands.keys(learned) : Map.of(),
                live ? PedalCommands.inWords(learned) : ""));
        keysShown = shown;
        turn();
    }

    /** What pedals and remotes do, for the sheet of keys. */
    void showLearned(LearnedButtons buttons) {
        learned = buttons;
    }

    /** Shows a moment of Live, with the incident page if it is open then. */
    public void showLive(@Nullable LiveView view) {
        showLive(view, view == null ? null : view.incident());
    }

    /**
     * Shows a moment of Live, or the incident page in its place.
     *
     * @param incident the incident page, which stands in place of the moment, or null
     */
    public void showLive(@Nullable LiveView view, @Nullable IncidentView incident) {
        live.show(view, incident);
        foot.warn(view == null ? List.of() : view.warnings());
        if (incident != null && keysShown) {
            keysShown = false;
            turn();
        } else {
            allow();
        }
    }

    /** Turns to the incident page. */
    void showIncident(IncidentView page) {
        live.showIncident(page);
        go(Place.LIVE);
    }

    public void showWalk(@Nullable WalkView view) {
        if (walk.show(view)) {
            allow();
        }
    }

    public void showDebrief(@Nullable DebriefView view) {
        if (debrief.show(view)) {
            allow();
        }
    }

    public void showPrepare(PrepareView view) {
        prepared = true;
        prepare.show(view);
        turn();
    }

    /** Turns from the remarks in Prepare to the passes. */
    public void showPasses() {
        prepare.ifMade(PreparePanel::showPasses);
    }

    /** Who is asked when somebody decides about a pass. */
    void passesBy(PassesHost host) {
        passes = host;
    }

    /** What is said wherever a show would be. */
    void showEmpty(EmptyShow.Shown shown) {
        empty.show(shown);
        live.showEmpty(shown);
        walk.showEmpty(shown);
        debrief.showEmpty(shown);
    }

    public void showGlossary(GlossaryView view) {
        glossary.show(view);
    }

    public FootLine foot() {
        return foot;
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
        live.wear(next);
        prepare.wear(next);
        words.wear(next);
        empty.wear(next);
        walk.wear(next);
        debrief.wear(next);
        glossary.wear(next);
        keys.wear(next);
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
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (place == Place.WORDS && !keysShown) {
            words.takeFocus();
        } else if (place == Place.WALK && !keysShown && walk.writing()) {
            walk.takeFocus();
        } else if (place == Place.LIVE || place == Place.WALK || keysShown || owner == null || !owner.isShowing()) {
            requestFocusInWindow();
        }
    }

    private void turn() {
        String card = place == Place.PREPARE && !prepared ? NO_SHOW : place.name();
        cards.show(stage, keysShown ? KEYS : card);
        SwingUtilities.invokeLater(this::keepFocus);
        allow();
    }

    /** What can be given follows from the place and from whether the incident page is up. */
    void allow() {
        Set<Command> possible = EnumSet.noneOf(Command.class);
        boolean incident = inIncident();
        if (place == Place.WORDS) {
            possible.addAll(words.possible());
        } else if (place == Place.PREPARE) {
            possible.addAll(words.possibleForAir());
        }
        for (Command command : Command.values()) {
            boolean here = switch (command.scope()) {
                case FIRST, WORDS -> false;
                case LIVE ->
                    place == Place.LIVE && !incident && (live.hasShow() || command == Command.INCIDENT_IN_LIVE);
                case WALK -> place == Place.WALK && walk.hasShow();
                case DEBRIEF -> place == Place.DEBRIEF && debrief.hasShow();
                case GLOSSARY -> place == Place.GLOSSARY && (drilling || command == Command.DRILL);
                case WINDOW -> !incident || LEFT_IN_INCIDENT.contains(command);
            };
            if (here && (command != Command.METAR || (place == Place.PREPARE && prepared))) {
                possible.add(command);
            }
        }
        actions.allow(possible);
        foot.show();
    }
}

package crowdline.console.walk;

import crowdline.console.keys.Command;
import crowdline.console.path.Player;
import crowdline.console.walk.WalkView.ScoreLine;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Measures;
import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.patter.Practice;
import crowdline.show.Act;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An act being walked through: where it is, how fast it plays, what is being timed or practised. The keys change it, time
 * is a parameter, and {@link #view} says what to show. On the event thread alone.
 */
public final class Walk {
    private static final String PASS_FIRST = "Press P to end the pass first";
    private static final String PRACTICE_FIRST = "Press R to end the practice run first";

    private final Route route;
    private final ShowLookup words;
    private final FigureNotes notes;
    private final Supplier<Instant> wall;
    private final Player player = new Player();
    private @Nullable Timing timing;
    private @Nullable ReadAloud reading;
    private List<ScoreLine> score = List.of();
    private String message = "";

    /**
     * @param tours every variant of every act, in running order; at least one
     * @param planner what to say when, for an act flown in these times
     * @param wall the wall clock, for the passes' dates
     */
    public Walk(
            List<Tour> tours,
            ShowLookup words,
            BiFunction<Act, ActTimes, Plan> planner,
            Passes passes,
            Notes notes,
            Supplier<Instant> wall) {
        this.words = words;
        this.notes = new FigureNotes(notes);
        this.wall = wall;
        route = new Route(tours, planner, passes);
        player.load(route.fromS(), route.toS());
    }

    /** What is walked through, so that another walk of the same show can begin there. */
    public Tour tour() {
        return route.tour();
    }

    /** Begins with that act and variant, if the show still has them. */
    public void beginWith(Tour tour) {
        route.choose(tour.act().id(), tour.variant().name());
        player.load(route.fromS(), route.toS());
    }

    /** Begins with an act, if the show has it and nothing else is walked through just now: no pass, no practice run. */
    void chooseAct(String actId) {
        if (timing == null && reading == null && route.choose(actId)) {
            player.load(route.fromS(), route.toS());
        }
    }

    /** Carries out a command of this place. */
    public void command(Command command, double nowS) {
        settle(nowS);
        message = "";
        switch (command) {
            case PLAY -> play(nowS);
            case WALK_NEXT -> step(true, nowS);
            case WALK_BACK -> step(false, nowS);
            case TIME_PASS -> time(nowS);
            case PRACTISE -> practise(nowS);
            case READ_ALOUD -> Optional.ofNullable(reading).ifPresent(r -> r.key(player.positionS(nowS)));
            case READ_DONE -> Optional.ofNullable(reading).ifPresent(r -> r.ended(player.positionS(nowS)));
            case FASTER -> player.change(1, nowS);
            case SLOWER -> player.change(-1, nowS);
            default -> {
                if (isFree()) {
                    move(command, nowS);
                }
            }
        }
    }

    /** True unless a pass or a practice run is on; then it says what to do first. */
    private boolean isFree() {
        message = timing != null ? PASS_FIRST : reading != null ? PRACTICE_FIRST : "";
        return message.isEmpty();
    }

    private void move(Command command, double nowS) {
        score = List.of();
        switch (command) {
            case SECOND_ON -> player.goTo(player.positionS(nowS) + 1, nowS);
            case SECOND_BACK -> player.goTo(player.positionS(nowS) - 1, nowS);
            case TO_START -> player.goTo(player.fromS(), nowS);
            case TO_END -> player.goTo(player.toS(), nowS);
            case WALK_ACT -> turn(route.nextAct(), "This show has no other act");
            case WALK_VARIANT -> turn(route.nextVariant(), "This act has no other variant");
            case WALK_TIMES -> turn(route.nextTimes(), "There is no pass of this variant yet; press P to time one");
            default -> throw new IllegalArgumentException(command + " is no command of the walk");
        }
    }

    /** Begins what was turned to from its start; where there is nothing else the walk stays where it is, and says why. */
    private void turn(boolean isOther, String otherwise) {
        message = isOther ? "" : otherwise;
        if (isOther) {
            player.load(route.fromS(), route.toS());
        }
    }

    private void play(double nowS) {
        Timing pass = timing;
        if (pass == null) {
            score = List.of();
            player.toggle(nowS);
        } else if (pass.mark(nowS, wall)) {
            time(nowS);
        }
    }

    private void step(boolean on, double nowS) {
        Timing pass = timing;
        if (pass != null) {
            if (on) {
                play(nowS);
            } else {
                pass.timer().back();
            }
        } else if (isFree()) {
            score = List.of();
            player.goTo(route.stepS(on, player.positionS(nowS)), nowS);
        }
    }

    private void time(double nowS) {
        Timing pass = timing;
        if (pass != null) {
            timing = null;
            message = pass.keptBy(route);
        } else if (isFree()) {
            player.stop(nowS);
            score = List.of();
            timing = new Timing(route.tour());
        }
    }

    private void practise(double nowS) {
        if (reading != null) {
            judge(nowS);
        } else if (isFree()) {
            score = List.of();
            player.goTo(player.fromS(), nowS);
            player.play(nowS);
            reading = new ReadAloud(route.plan(), player.fromS());
        }
    }

    private void judge(double nowS) {
        ReadAloud run = reading;
        if (run != null) {
            double atS = player.positionS(nowS);
            Practice practice =
                    Practice.of(route.slots(), route.plan(), run.said(atS), run.fromS(), atS, PatterRules.DEFAULT);
            score = ScorePresenter.of(practice, route.plan(), route.tour(), words, player.inWords());
            player.stop(nowS);
            reading = null;
        }
    }

    /** What has come to its end by itself. */
    private void settle(double nowS) {
        if (reading != null && player.atEnd(nowS)) {
            judge(nowS);
        }
    }

    /** Goes to a share of the act's line, as when the mouse points at it; not while something is timed. */
    public void goTo(double share, double nowS) {
        message = "";
        if (isFree()) {
            score = List.of();
            player.goTo(player.fromS() + share * (player.toS() - player.fromS()), nowS);
        }
    }

    /** Stops what plays by itself; not a practice run or a pass, which have their own keys. */
    public void pause(double nowS) {
        if (timing == null && reading == null) {
            player.stop(nowS);
        }
    }

    /** The note on the figure shown, to be changed; empty if there is none yet. */
    public String note(double nowS) {
        return figureId(nowS).map(id -> notes.text(route.act().id(), id)).orElse("");
    }

    /** Writes a note on the figure shown in place of the one there; an empty one takes it away. */
    public void write(String text, double nowS) {
        figureId(nowS).ifPresent(id -> notes.write(route.act().id(), id, text));
    }

    public WalkView view(double nowS) {
        return view(nowS, Measures.USUAL);
    }

    /**
     * What is shown at a moment.
     *
     * @param measures what the commentator reads speeds and heights in
     */
    public WalkView view(double nowS, Measures measures) {
        settle(nowS);
        return new WalkPresenter(words, this, nowS, measures).view();
    }

    Route route() {
        return route;
    }

    Player player() {
        return player;
    }

    @Nullable
    PassTimer timer() {
        return timing == null ? null : timing.timer();
    }

    @Nullable
    ReadAloud reading() {
        return reading;
    }

    List<ScoreLine> score() {
        return score;
    }

    String message() {
        return message;
    }

    /** Figures of the act that have a note. */
    List<String> noted() {
        return notes.figuresOf(route.act().id());
    }

    /** The figure shown, or the first while its call is due. */
    Optional<String> figureId(double nowS) {
        PassTimer walked = timer();
        List<FigureTime> figures = walked != null ? route.tour().times().figures() : route.figures();
        int index = walked != null ? walked.index() : route.index(player.positionS(nowS));
        return figures.isEmpty()
                ? Optional.empty()
                : Optional.of(figures.get(Math.max(0, index)).figureId());
    }
}

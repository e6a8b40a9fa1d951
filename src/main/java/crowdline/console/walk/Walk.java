package crowdline.console.walk;

import crowdline.console.keys.Command;
import crowdline.console.live.Seconds;
import crowdline.console.live.ShowWords;
import crowdline.console.walk.WalkView.ScoreLine;
import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.patter.Practice;
import crowdline.show.Act;
import crowdline.show.FigureNote;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An act being walked through: where it is, how fast it plays, what is being timed or practised. The keys change it, time
 * is a parameter, and {@link #view} says what to show. On the event thread alone.
 */
public final class Walk {
    /** Within this time after a figure's start, back means the figure before; tuned. */
    private static final double JUST_BEGUN_S = 1;

    private static final String PASS_FIRST = "P ends the pass first";
    private static final String PRACTICE_FIRST = "R ends the practice run first";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private final Route route;
    private final ShowWords words;
    private final Notes notes;
    private final Supplier<Instant> wall;
    private final Player player = new Player();
    private @Nullable PassTimer timer;
    private Instant timedFrom = Instant.EPOCH;
    private @Nullable Reading reading;
    private List<ScoreLine> score = List.of();
    private String message = "";

    /**
     * @param tours every variant of every act, in running order; at least one
     * @param planner what to say when, for an act flown in these times
     * @param wall the wall clock, for the passes' dates
     */
    public Walk(
            List<Tour> tours,
            ShowWords words,
            BiFunction<Act, ActTimes, Plan> planner,
            Passes passes,
            Notes notes,
            Supplier<Instant> wall) {
        this.words = words;
        this.notes = notes;
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
        message = timer != null ? PASS_FIRST : reading != null ? PRACTICE_FIRST : "";
        return message.isEmpty();
    }

    private void move(Command command, double nowS) {
        score = List.of();
        switch (command) {
            case SECOND_ON -> player.goTo(player.positionS(nowS) + 1, nowS);
            case SECOND_BACK -> player.goTo(player.positionS(nowS) - 1, nowS);
            case TO_START -> player.goTo(player.fromS(), nowS);
            case TO_END -> player.goTo(player.toS(), nowS);
            case WALK_ACT -> route.nextAct();
            case WALK_VARIANT -> route.nextVariant();
            case WALK_TIMES -> message = route.nextTimes() ? "" : "There is no pass of this variant yet; P times one";
            default -> {}
        }
        if (command == Command.WALK_ACT || command == Command.WALK_VARIANT || command == Command.WALK_TIMES) {
            player.load(route.fromS(), route.toS());
        }
    }

    private void play(double nowS) {
        PassTimer timing = timer;
        if (timing == null) {
            score = List.of();
            player.toggle(nowS);
            return;
        }
        if (timing.index() < 0) {
            timedFrom = wall.get();
        }
        if (timing.mark(nowS)) {
            time(nowS);
        }
    }

    private void step(boolean on, double nowS) {
        PassTimer timing = timer;
        if (timing != null) {
            if (on) {
                play(nowS);
            } else {
                timing.back();
            }
        } else if (isFree()) {
            score = List.of();
            double atS = player.positionS(nowS);
            int index = on ? route.index(atS) + 1 : route.index(atS - JUST_BEGUN_S);
            if (index < 0) {
                player.goTo(player.fromS(), nowS);
            } else if (index < route.figures().size()) {
                player.goTo(route.figures().get(index).startS(), nowS);
            } else {
                player.goTo(player.toS(), nowS);
            }
        }
    }

    private void time(double nowS) {
        PassTimer timing = timer;
        if (timing != null) {
            timer = null;
            String id = "walked-" + DAY.format(timedFrom.atOffset(ZoneOffset.UTC));
            Tour tour = route.tour();
            Optional<Pass> made =
                    timing.pass(id, tour.act().id(), tour.variant().name(), timedFrom);
            made.ifPresent(route::keep);
            message = made.map(Walk::kept).orElse("No figure was timed to its end; nothing is kept");
        } else if (isFree()) {
            player.stop(nowS);
            score = List.of();
            timer = new PassTimer(route.tour().times().figures().stream()
                    .map(FigureTime::figureId)
                    .toList());
        }
    }

    private static String kept(Pass pass) {
        int count = pass.figures().size();
        return "Kept as a pass: " + count + (count == 1 ? " figure, " : " figures, ")
                + Seconds.clock(pass.figures().get(count - 1).endS()) + ". W shows it";
    }

    private void practise(double nowS) {
        if (reading != null) {
            judge(nowS);
        } else if (isFree()) {
            score = List.of();
            player.goTo(player.fromS(), nowS);
            player.play(nowS);
            reading = new Reading(route.plan(), player.fromS());
        }
    }

    private void judge(double nowS) {
        Reading run = reading;
        if (run != null) {
            double atS = player.positionS(nowS);
            Practice practice =
                    Practice.of(route.slots(), route.plan(), run.said(atS), run.fromS(), atS, PatterRules.DEFAULT);
            score = ScoreWords.of(practice, route.plan(), route.act(), words, player.inWords());
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
        if (timer == null && reading == null) {
            player.stop(nowS);
        }
    }

    /** The note on the figure shown, to be changed; empty if there is none yet. */
    public String note(double nowS) {
        return figureId(nowS)
                .flatMap(id -> notes.all().stream()
                        .filter(n -> n.about(route.act().id(), id))
                        .findFirst())
                .map(FigureNote::text)
                .orElse("");
    }

    /** Writes a note on the figure shown in place of the one there; an empty one takes it away. */
    public void write(String text, double nowS) {
        String act = route.act().id();
        String plain = text.strip();
        figureId(nowS).ifPresent(id -> {
            Stream<FigureNote> others = notes.all().stream().filter(n -> !n.about(act, id));
            Stream<FigureNote> own = plain.isEmpty()
                    ? Stream.of()
                    : Stream.of(
                            new FigureNote(act, id, plain.substring(0, Math.min(plain.length(), FigureNote.LONGEST))));
            notes.keep(Stream.concat(others, own).toList());
        });
    }

    public WalkView view(double nowS) {
        settle(nowS);
        return new WalkPresenter(words, this, nowS).view();
    }

    // What the presenter reads.

    Route route() {
        return route;
    }

    Player player() {
        return player;
    }

    @Nullable
    PassTimer timer() {
        return timer;
    }

    @Nullable
    Reading reading() {
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
        return notes.all().stream()
                .filter(n -> n.actId().equals(route.act().id()))
                .map(FigureNote::figureId)
                .toList();
    }

    /** The figure shown, or the first while its call is due. */
    Optional<String> figureId(double nowS) {
        PassTimer timing = timer;
        List<FigureTime> figures = timing != null ? route.tour().times().figures() : route.figures();
        int index = timing != null ? timing.index() : route.index(player.positionS(nowS));
        return figures.isEmpty()
                ? Optional.empty()
                : Optional.of(figures.get(Math.max(0, index)).figureId());
    }
}

package crowdline.console.live.say;

import crowdline.console.live.row.LiveMoment;
import crowdline.console.live.say.SayView.Bars;
import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.FitMark;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.paint.Spare;
import crowdline.console.theme.Tone;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.live.state.Talk;
import crowdline.live.state.TalkEnd;
import crowdline.live.state.WhoseTurn;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Fit;
import crowdline.patter.PatterRules;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Room;
import crowdline.patter.Speaking;
import crowdline.show.Act;
import crowdline.show.Interpreting;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.plain.Breaths;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says what to say now, from what is being spoken, the quiets and the plan, in this order. */
public final class SayPresenter {
    /** The longest line a breath may fill, in letters; it fits the row at its designed size. */
    private static final int BREATH_CHARS = 54;
    /** Within this it is time to speak; before it the words wait, seconds. */
    private static final double NOW_S = TalkEnd.AHEAD_S;
    /** The part gone is told in steps of this, so that it is painted again only when one could see it. */
    private static final double STEP_S = 0.1;

    /** Where there is so many times the time, nobody who sees both would say that it just fits. Tuned. */
    private static final double AMPLE = 2;

    /** A remark that begins a little late is not too long for that: the breath before the next one gives way, seconds. */
    private static final double BREATH_S = 0.5;

    private SayPresenter() {}

    /** What is said, and the remark behind it. */
    public record Saying(SayView view, @Nullable String remarkId, boolean shortForm, boolean waits) {
        static Saying nothing(SayView view) {
            return new Saying(view, null, false, false);
        }
    }

    /** A remark in its time. */
    private record Turn(Remark remark, boolean shortForm, double startS, double endS, boolean tight, boolean begun) {}

    public static Saying of(LiveMoment moment, ShowLookup words) {
        double nowS = moment.now().nowS();
        Optional<String> left =
                TalkEnd.due(moment.state(), moment.plan(), words::time, nowS).map(TalkEvent.RemarkLeft::remarkId);
        Speaking speaking = left.isPresent() ? null : moment.state().talk().speaking();
        Turn turn = turn(moment, words, speaking, left.orElse(null));
        Act act = words.act(moment.state().actId()).orElse(null);
        QuietNow quiet = QuietNow.of(moment.now(), act, words);
        if (speaking == null && quiet != null && (turn == null || turn.startS() > nowS - NOW_S)) {
            return Saying.nothing(listen(quiet, nowS));
        }
        if (turn == null) {
            return Saying.nothing(nothing(
                    moment,
                    words,
                    act,
                    !Takeable.of(moment, words, act, RemarkKind.FILLER, null).isEmpty()));
        }
        SayWhen when = SayWhen.of(moment, words, turn.remark());
        boolean ahead = turn.startS() - nowS > NOW_S || when == SayWhen.AS_IT_CARRIES_ON;
        boolean waits = ahead && !turn.begun() && !when.mayBeSaid(turn.remark());
        return new Saying(words(moment, words, turn, nowS, waits), turn.remark().id(), turn.shortForm(), waits);
    }

    /** @param leftId what has just left the screen, or null */
    private static @Nullable Turn turn(
            LiveMoment moment, ShowLookup words, @Nullable Speaking speaking, @Nullable String leftId) {
        double nowS = moment.now().nowS();
        if (speaking != null) {
            Remark remark = words.remark(speaking.remarkId()).orElse(null);
            if (remark != null) {
                boolean shortForm = speaking.form() == RemarkForm.SHORT;
                double endS =
                        speaking.startedAtS() + words.time(remark, shortForm).seconds();
                return new Turn(remark, shortForm, speaking.startedAtS(), endS, false, true);
            }
        }
        Turn over = null;
        Talk here = moment.state().talkHere();
        for (Placed placed : moment.plan().placed()) {
            Remark remark = words.remark(placed.remarkId()).orElse(null);
            boolean done = here.settled(placed) || placed.remarkId().equals(leftId);
            if (remark == null || done || placed.endS() + TalkEnd.LINGER_S <= nowS) {
                continue;
            }
            boolean shortForm = placed.form() == RemarkForm.SHORT;
            Turn turn = new Turn(remark, shortForm, placed.startS(), placed.endS(), placed.tight(), false);
            if (placed.endS() <= nowS) {
                over = turn;
            } else {
                return over != null && placed.startS() > nowS ? over : turn;
            }
        }
        if (over != null) {
            return over;
        }
        return null;
    }

    private static SayView words(LiveMoment moment, ShowLookup words, Turn turn, double nowS, boolean waits) {
        SpokenTime time = words.time(turn.remark(), turn.shortForm());
        double goneS = steps(Math.max(0, nowS - turn.startS()));
        double takesS = Math.max(0.1, time.seconds());
        double ownS = Math.max(
                0.1, words.voices().first(turn.remark(), turn.shortForm()).seconds());
        Double endS = windowEndS(moment, words, turn);
        double thereIsS = endS == null ? Math.max(takesS, goneS) : Math.max(0, endS - turn.startS());
        Room room = room(thereIsS, pastS(moment, turn, endS));
        Fit fit = fit(time, room, turn.tight() && thereIsS < AMPLE * takesS);
        boolean past = fit == Fit.RUNS_OVER && turn.remark().kind() != RemarkKind.CALL;
        double saidInS = past ? thereIsS + room.pastS() : thereIsS;
        double waitS = turn.startS() - nowS;
        String says = moment.state().whoseTurn() == WhoseTurn.CONSOLE
                ? ""
                : words.other(turn.remark()).map(name -> name + ": ").orElse("");
        String caption = says
                + (waits || waitS > NOW_S
                        ? SayWhen.of(moment, words, turn.remark()).words(turn.remark(), waitS)
                        : turn.begun() ? "Saying" : "Say now");
        String kind = words.sort(turn.remark())
                + (turn.shortForm() ? ", short form" : "")
                + (turn.remark().draft() ? ", draft" : "")
                + other(turn, words);
        return new SayView(
                waits ? What.WAITING : What.WORDS,
                caption,
                kind,
                Breaths.lines(turn.remark().words(turn.shortForm()), BREATH_CHARS),
                Math.min(1, goneS / ownS),
                endS == null
                        ? new Mark(Form.DISC, Tone.GOOD, "No hurry")
                        : past
                                ? FitMark.of(fit, " its figure by " + over(takesS - thereIsS))
                                : Spare.of(fit, thereIsS - time.seconds()),
                new Bars(
                        saidInS,
                        takesS,
                        time.highS(),
                        goneS,
                        endS == null ? "no limit" : Seconds.left(saidInS - goneS) + " left",
                        goneS >= takesS ? "S when said" : Seconds.left(takesS - goneS) + " to say"));
    }

    /** The other language only as the time it takes: whoever says it has the words in the second window. */
    private static String other(Turn turn, ShowLookup words) {
        return words.interpreted(turn.remark(), turn.shortForm())
                .map(said -> words.voices().interpreting() == Interpreting.AFTER
                        ? ", then " + said.words().languageName() + " "
                                + Seconds.left(said.time().seconds())
                        : ", with " + said.words().languageName())
                .orElse("");
    }

    private static Fit fit(SpokenTime takes, Room room, boolean tight) {
        Fit alone = Fit.of(takes, room);
        return tight ? alone.atBest(Fit.JUST_FITS) : alone;
    }

    private static String over(double seconds) {
        return Seconds.left(Math.max(1, Math.ceil(seconds)));
    }

    /** Live the rest of the figure is being counted down, so no shorter and no longer one is reckoned with. */
    private static Room room(double thereIsS, double pastS) {
        return pastS > 0 ? new Room(thereIsS, thereIsS, thereIsS, pastS) : Room.fixed(thereIsS + BREATH_S);
    }

    /** How far it may go on into the next figure: as the rules of planning allow, and no further than what comes next. */
    private static double pastS(LiveMoment moment, Turn turn, @Nullable Double endS) {
        if (endS == null || !endsWithFigure(moment.now(), endS)) {
            return 0;
        }
        double nextS = nextS(moment, turn);
        return Math.max(0, Math.min(PatterRules.DEFAULT.runPastS(), nextS - endS));
    }

    private static boolean endsWithFigure(LiveNow now, double endS) {
        FigureNow figure = now.figure();
        return figure != null && endS >= now.nowS() + figure.leftS() - STEP_S;
    }

    /**
     * The first moment at which something else wants the air: the next remark, a quiet, the end of its figure; null if
     * nothing is known to.
     */
    private static @Nullable Double windowEndS(LiveMoment moment, ShowLookup words, Turn turn) {
        double endS = Math.min(callEndS(moment, words, turn), nextS(moment, turn));
        LiveNow now = moment.now();
        FigureNow figure = now.figure();
        Act act = words.act(moment.state().actId()).orElse(null);
        if (figure != null) {
            double figureEndS = now.nowS() + figure.leftS();
            Optional<Figure> own = words.figure(act, figure.figureId());
            if (own.isPresent()) {
                boolean ownRemark = own.get().remarks().contains(turn.remark());
                // A figure over its time ends nobody knows when.
                boolean ends = ownRemark && figureEndS > turn.startS() && !figure.isOver();
                endS = ends ? Math.min(endS, figureEndS) : endS;
                double figureStartS = now.nowS() - figure.timeInS();
                for (Quiet quiet : own.get().quiets()) {
                    double quietS = figureStartS + quiet.fromS();
                    endS = quietS > turn.startS() ? Math.min(endS, quietS) : endS;
                }
            }
            if (endS == Double.POSITIVE_INFINITY && figureEndS > turn.startS() && !figure.isOver()) {
                endS = figureEndS;
            }
        }
        return endS == Double.POSITIVE_INFINITY ? null : endS;
    }

    /** When the next remark of the plan begins; endless if there is none. */
    private static double nextS(LiveMoment moment, Turn turn) {
        return moment.plan().placed().stream()
                .filter(p -> !p.remarkId().equals(turn.remark().id()) && p.startS() > turn.startS())
                .mapToDouble(Placed::startS)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * When a call has to be over: as its figure begins, and where nobody knows when that is, after as long as a call may take.
     * Endless for anything but a call.
     */
    private static double callEndS(LiveMoment moment, ShowLookup words, Turn turn) {
        if (turn.remark().kind() != RemarkKind.CALL) {
            return Double.POSITIVE_INFINITY;
        }
        double longestS = turn.startS()
                + PatterRules.DEFAULT.callStartsAtMostBeforeS()
                - PatterRules.DEFAULT.callEndsAtLeastBeforeS();
        Act act = words.act(moment.state().actId()).orElse(null);
        return moment.now().upcoming().stream()
                .filter(ahead -> words.figure(act, ahead.figureId())
                        .map(f -> f.remarks().contains(turn.remark()))
                        .orElse(false))
                .findFirst()
                .map(ahead -> ahead.inS() == null || moment.state().course().isWaiting()
                        ? longestS
                        : moment.now().nowS() + ahead.inS())
                .map(startS -> startS > turn.startS() ? Math.min(startS, longestS) : longestS)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static SayView listen(QuietNow quiet, double nowS) {
        double goneS = steps(nowS - quiet.fromS());
        return new SayView(
                What.LISTEN,
                "Quiet",
                quiet.why(),
                List.of("Let them listen"),
                0,
                null,
                new Bars(quiet.toS() - quiet.fromS(), 0, 0, goneS, Seconds.left(quiet.toS() - nowS) + " of quiet", ""));
    }

    /** @param filler true if there is one to take: a key that gives nothing is not offered */
    private static SayView nothing(LiveMoment moment, ShowLookup words, @Nullable Act act, boolean filler) {
        if (moment.plan().equals(Plan.NOT_YET)) {
            List<String> wait = List.of("What to say is still being worked out.");
            return new SayView(What.NOTHING, "Say now", "", wait, 0, null, null);
        }
        String text = moment.now().upcoming().isEmpty()
                ? "Nothing is waiting to be said."
                : "Nothing to say for now. Next: "
                        + words.name(
                                act,
                                moment.state().variant(),
                                moment.now().upcoming().get(0).figureId())
                        + ".";
        String offer = filler ? " Press F for a filler." : "";
        return new SayView(What.NOTHING, "Say now", "", List.of(text + offer), 0, null, null);
    }

    private static double steps(double seconds) {
        return Math.max(0, Math.round(seconds / STEP_S) * STEP_S);
    }
}

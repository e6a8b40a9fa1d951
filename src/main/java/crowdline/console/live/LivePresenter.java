package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.day.OrderPresenter;
import crowdline.console.live.next.NextView;
import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Later;
import crowdline.console.live.now.NowPresenter;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.live.say.SayPresenter;
import crowdline.console.live.say.Takeable;
import crowdline.console.live.strip.StripPresenter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.now.DayNow;
import crowdline.live.now.FigureNow;
import crowdline.live.now.Upcoming;
import crowdline.live.state.Course;
import crowdline.live.state.Talk;
import crowdline.live.state.WhoseTurn;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Decides what the Live screen shows. Pure: the same moment gives the same view. */
public final class LivePresenter {
    private static final int FACTS = 3;

    private final ShowLookup words;

    public LivePresenter(ShowLookup words) {
        this.words = words;
    }

    public LiveView view(LiveMoment moment) {
        Act act = words.act(moment.state().actId()).orElse(null);
        SayPresenter.Saying saying = SayPresenter.of(moment, words);
        List<Remark> facts = facts(moment, act, saying.remarkId());
        // One that still waits on the screen may be taken at once.
        List<Remark> fillers =
                Takeable.of(moment, words, act, RemarkKind.FILLER, saying.waits() ? null : saying.remarkId()).stream()
                        .sorted(Comparator.comparing(filler -> !filler.id().equals(saying.remarkId())))
                        .toList();
        List<Upcoming> upcoming = moment.now().upcoming();
        Integer nextIndex = upcoming.isEmpty() ? null : upcoming.get(0).index();
        Handles handles = new Handles(
                saying.remarkId(),
                saying.shortForm(),
                saying.waits(),
                facts.stream().map(Remark::id).toList(),
                fillers.isEmpty() ? null : fillers.get(0).id(),
                nextIndex);
        return new LiveView(
                StripPresenter.of(moment, words),
                NowPresenter.of(moment, words).next(nextIndex),
                saying.view(),
                next(moment, act, facts),
                incident(moment),
                marks(moment),
                handles.withTurn(new Turns(moment, handles, words).others().isPresent()),
                null);
    }

    /** What the plan still has comes first: the rest stood on the screen at its time, and would be told twice. */
    private List<Remark> facts(LiveMoment moment, @Nullable Act act, @Nullable String shownId) {
        Set<String> ahead = Stream.concat(
                        moment.plan().placed().stream().map(Placed::remarkId),
                        moment.plan().unplaced().stream().map(Unplaced::remarkId))
                .collect(Collectors.toSet());
        return Takeable.of(moment, words, act, RemarkKind.FACT, shownId).stream()
                .sorted(Comparator.comparing(fact -> !ahead.contains(fact.id())))
                .limit(FACTS)
                .toList();
    }

    private List<Mark> marks(LiveMoment moment) {
        List<Mark> marks = new ArrayList<>(warnings(moment));
        if (moment.state().whoseTurn() == WhoseTurn.OTHER) {
            marks.add(new Mark(
                    Form.SQUARE,
                    Tone.CAUTION,
                    "The other speaks next. " + Command.HAND_OVER.key() + " when it is your turn again"));
        }
        return marks;
    }

    /** Duties the plan has no time for; a duty is never left out without a word. */
    private List<Mark> warnings(LiveMoment moment) {
        Talk here = moment.state().talkHere();
        Talk ever = moment.state().talk();
        List<Remark> lost = moment.plan().unplaced().stream()
                .flatMap(u -> words.remark(u.remarkId()).stream())
                .filter(r -> r.kind() == RemarkKind.DUTY)
                .filter(r -> !here.said(r.id()) && !here.skipped(r.id()))
                .filter(r -> !r.once() || !ever.said(r.id()))
                .toList();
        if (lost.isEmpty()) {
            return List.of();
        }
        String more = lost.size() == 1 ? "" : " and " + (lost.size() - 1) + " more";
        return List.of(new Mark(
                Form.STOP,
                Tone.ALARM,
                "No time left in this act for a duty: " + lost.get(0).words(true) + more));
    }

    private NextView next(LiveMoment moment, @Nullable Act act, List<Remark> facts) {
        List<FactView> factViews = IntStream.range(0, facts.size())
                .mapToObj(i -> new FactView(i + 1, form(facts.get(i), false), form(facts.get(i), true)))
                .toList();
        List<Upcoming> upcoming = moment.now().upcoming();
        if (upcoming.isEmpty()) {
            Act after = words.act(moment.now().nextActId()).orElse(null);
            return after == null
                    ? new NextView("Then", "", "The end of the show", "", List.of(), factViews)
                    : new NextView(
                            "Then, at",
                            OrderPresenter.hour(DayNow.slot(moment.state(), words.show(), after)),
                            after.title(),
                            words.whoElse(after),
                            List.of(),
                            factViews);
        }
        Upcoming first = upcoming.get(0);
        Double inS = first.inS();
        String caption = moment.state().course().inTheAir() ? "Next" : "First";
        FigureNow figure = moment.now().figure();
        boolean held = figure != null && figure.held();
        boolean open = held || inS == null || inS <= 0;
        // What is only flown on the way to a figure is nothing to look forward to.
        List<Later> later = upcoming.stream()
                .skip(1)
                .filter(u -> !isOnTheWay(act, u.figureId()))
                .limit(2)
                .map(u -> later(moment, act, u, open ? after(first, u) : in(u.inS())))
                .toList();
        return new NextView(
                caption + (open ? "" : " in"),
                held ? "after the hold" : inS == null ? "" : inS <= 0 ? "any moment" : Seconds.left(inS),
                swapped(moment, act, first),
                asPlanned(moment, first)
                        ? words.where(moment.state().actId(), moment.state().variant(), first.figureId())
                        : "",
                words.name(act, moment.state().variant(), first.figureId()),
                call(act, upcoming),
                later,
                factViews);
    }

    private NextView.Wording form(Remark fact, boolean shortForm) {
        return new NextView.Wording(
                fact.words(shortForm), Seconds.left(words.time(fact, shortForm).seconds()));
    }

    /** True if it follows the figure that it follows in the plan: only then does it begin where that says. */
    private static boolean asPlanned(LiveMoment moment, Upcoming next) {
        return next.index() == moment.state().course().position() + 1;
    }

    private Later later(LiveMoment moment, @Nullable Act act, Upcoming ahead, String in) {
        Mark swapped = moment.state().course().swappedWith(ahead.index()).isEmpty()
                ? null
                : new Mark(Form.SWAP, Tone.CAUTION, in.isEmpty() ? "swapped" : in + ", swapped");
        return new Later(words.name(act, moment.state().variant(), ahead.figureId()), in, swapped);
    }

    /** That the figure was swapped, and with which if it was one. */
    private @Nullable Mark swapped(LiveMoment moment, @Nullable Act act, Upcoming ahead) {
        Course course = moment.state().course();
        List<Integer> others = course.swappedWith(ahead.index());
        if (others.isEmpty()) {
            return null;
        }
        String with = others.size() == 1
                ? " with "
                        + words.name(
                                act,
                                moment.state().variant(),
                                course.figureIds().get(others.get(0)))
                : "";
        return new Mark(Form.SWAP, Tone.CAUTION, "Swapped" + with);
    }

    /** How long after the next one begins, where nobody knows when that is. */
    private static String after(Upcoming next, Upcoming ahead) {
        Double nextS = next.inS();
        Double aheadS = ahead.inS();
        return nextS == null || aheadS == null ? "" : Seconds.left(aheadS - nextS) + " later";
    }

    private static String in(@Nullable Double inS) {
        return inS == null ? "" : "in " + Seconds.left(inS);
    }

    /** The call of what is next; on the way to a figure, that figure's. */
    private String call(@Nullable Act act, List<Upcoming> upcoming) {
        String first = upcoming.get(0).figureId();
        String call = call(act, first);
        return call.isEmpty() && isOnTheWay(act, first) && upcoming.size() > 1
                ? call(act, upcoming.get(1).figureId())
                : call;
    }

    private boolean isOnTheWay(@Nullable Act act, String figureId) {
        return words.figure(act, figureId).filter(Figure::transit).isPresent();
    }

    private String call(@Nullable Act act, String figureId) {
        return words.figure(act, figureId)
                .flatMap(f -> f.remarks().stream()
                        .filter(r -> r.kind() == RemarkKind.CALL)
                        .findFirst())
                .map(Remark::text)
                .orElse("");
    }

    private @Nullable IncidentView incident(LiveMoment moment) {
        Double openS = moment.now().incidentS();
        return moment.state().incidentOpen() && openS != null
                ? IncidentPresenter.of(words.show().incident(), moment.clock().toLocalTime(), openS)
                : null;
    }
}

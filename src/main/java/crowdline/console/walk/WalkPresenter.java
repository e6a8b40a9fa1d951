package crowdline.console.walk;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.passes.PassName;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Tone;
import crowdline.console.walk.WalkView.Flying;
import crowdline.console.walk.WalkView.Saying;
import crowdline.console.walk.WalkView.Top;
import crowdline.console.walk.WalkView.Words;
import crowdline.flight.FigureFlight;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Measures;
import crowdline.patter.Placed;
import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.figure.RemarkForm;
import crowdline.sight.ActSheet;
import crowdline.sight.SideView;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Says what the Walk through place shows at one moment. */
final class WalkPresenter {
    /** The next remark is shown this long before its time; a design choice, as long as one needs to read it. */
    private static final double READY_S = 4;

    private final ShowLookup words;
    private final Walk walk;
    private final Route route;
    private final Act act;
    private final double nowS;
    private final Measures measures;
    private final double atS;

    WalkPresenter(ShowLookup words, Walk walk, double nowS, Measures measures) {
        this.measures = measures;
        this.words = words;
        this.walk = walk;
        this.route = walk.route();
        this.act = route.act();
        this.nowS = nowS;
        this.atS = walk.player().positionS(nowS);
    }

    private CrowdUnits units() {
        return words.show().venue().crowdUnits();
    }

    WalkView view() {
        return new WalkView(
                top(),
                flying(),
                saying(),
                new WalkBar(words, walk, nowS).bar(),
                walk.figureId(nowS)
                        .map(id -> words.name(act, route.tour().variant().name(), id))
                        .orElse(""),
                walk.message().isEmpty() ? hint() : walk.message());
    }

    private Top top() {
        PassTimer timer = walk.timer();
        String clock = timer != null
                ? Seconds.clock(timer.sinceStartS(nowS))
                : (atS < 0 ? "−" + Seconds.clock(Math.ceil(-atS)) : Seconds.clock(atS)) + " of "
                        + Seconds.planned(route.endS());
        return new Top(
                act.title(),
                route.tour().variant().name(),
                times(),
                state(),
                walk.player().inWords(),
                clock);
    }

    private String times() {
        int passes = route.tour().passes();
        return route.pass()
                .map(pass -> new PassName(words.zone()).of(route.passNumber(), pass))
                .orElse(
                        passes == 0
                                ? "the prediction"
                                : "learned from " + passes + (passes == 1 ? " pass" : " passes"));
    }

    private Mark state() {
        if (walk.timer() != null) {
            return new Mark(Form.SQUARE, Tone.CAUTION, "Timing a pass");
        }
        boolean playing = walk.player().playing(nowS);
        if (walk.reading() != null) {
            return playing
                    ? new Mark(Form.DIAMOND, Tone.CAUTION, "Practice")
                    : new Mark(Form.BARS, Tone.CAUTION, "Practice, paused");
        }
        if (playing) {
            return new Mark(Form.CLOCK, Tone.GOOD, "Playing");
        }
        return walk.player().atEnd(nowS)
                ? new Mark(Form.STOP, Tone.CALM, "At the end")
                : new Mark(Form.BARS, Tone.CALM, "Stopped");
    }

    private Flying flying() {
        PassTimer timer = walk.timer();
        List<FigureTime> figures = timer != null ? route.tour().times().figures() : route.figures();
        int index = timer != null ? timer.index() : route.index(atS);
        if (figures.isEmpty()) {
            return new Flying(
                    "No figures",
                    "",
                    "",
                    "Add figures to this variant in the show file.",
                    TrackValues.of(null, units(), measures),
                    SideView.NONE,
                    SkyView.NONE);
        }
        if (index < 0) {
            FigureTime first = figures.get(0);
            return new Flying(
                    "First: " + words.name(act, route.tour().variant().name(), first.figureId()),
                    "before the first of " + figures.size(),
                    timer != null ? "Space when it begins" : "",
                    words.look(act, first.figureId()),
                    TrackValues.of(null, units(), measures),
                    route.tour().sheet().path(-1),
                    sky(flightIndex(first.figureId())));
        }
        FigureTime figure = figures.get(index);
        double gone = timer != null
                ? timer.inFigureS(nowS) / figure.durationS()
                : (atS - figure.startS()) / figure.durationS();
        double share = Math.max(0, Math.min(1, gone));
        int place = flightIndex(figure.figureId());
        Optional<FlownTrack> track = FlownTrack.at(route.tour().flight(), place, share);
        return new Flying(
                words.name(act, route.tour().variant().name(), figure.figureId()),
                index + 1 + " of " + figures.size(),
                track.map(t -> t.element() + (t.upsideDown() ? ", upside down" : ""))
                        .orElse("timed, not predicted"),
                words.look(act, figure.figureId()),
                TrackValues.of(track.orElse(null), units(), measures),
                // Of a figure that is only timed there is no path, so the whole act is shown, as before its first.
                track.isPresent()
                        ? route.tour().sheet().at(place, share, null)
                        : route.tour().sheet().path(-1),
                track.isPresent() ? sky(place, share) : sketch(figure.figureId()));
    }

    /** How a figure that is only timed usually looks; it stands still, for nobody knows where the aircraft is. */
    private SkyView sketch(String figureId) {
        return SkyView.whole(words.sketch(act, figureId), route.tour().sheet().outline());
    }

    /** A whole figure as the crowd sees it. */
    private SkyView sky(int place) {
        ActSheet sheet = route.tour().sheet();
        Double crowdM = sheet.crowdM();
        Flown flown = sheet.flown(place);
        return crowdM == null || !(crowdM > 0) || flown.isEmpty()
                ? SkyView.NONE
                : new SkyView(flown, OptionalDouble.empty(), Eye.standing(crowdM), sheet.outline(), "");
    }

    /** The same after a share of its time. */
    private SkyView sky(int place, double share) {
        SkyView whole = sky(place);
        return whole.isEmpty() ? whole : whole.at(route.tour().sheet().atS(place, share));
    }

    private int flightIndex(String figureId) {
        List<FigureFlight> figures = route.tour().flight().figures();
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).figureId().equals(figureId)) {
                return i;
            }
        }
        return -1;
    }

    private Saying saying() {
        String note = walk.note(nowS);
        if (!walk.score().isEmpty()) {
            return new Saying(null, "", null, note, walk.score());
        }
        if (walk.timer() != null) {
            return new Saying(
                    null, "Walk the act with your hands. Press Space as each figure begins.", null, note, List.of());
        }
        List<Placed> placed = route.plan().placed();
        Placed now = null;
        ReadAloud reading = walk.reading();
        if (reading != null) {
            now = reading.due(atS);
            if (now != null && !reading.speaking() && now.startS() - READY_S > atS) {
                now = null;
            }
        } else {
            now = placed.stream()
                    .filter(p -> p.startS() - READY_S <= atS && atS < p.endS())
                    .findFirst()
                    .orElse(null);
        }
        Placed shown = now;
        Placed next = placed.stream()
                .filter(p -> !p.equals(shown) && p.startS() >= (shown == null ? atS : shown.startS()))
                .findFirst()
                .orElse(null);
        return new Saying(
                now == null ? null : words(now),
                next == null ? "Nothing more to say" : "Nothing to say for " + Seconds.left(next.startS() - atS),
                next == null ? null : words(next),
                note,
                List.of());
    }

    private Words words(Placed placed) {
        double lengthS = placed.endS() - placed.startS();
        double gone = lengthS <= 0 ? 0 : (atS - placed.startS()) / lengthS;
        String when = atS < placed.startS()
                ? "in " + Seconds.left(placed.startS() - atS) + ", takes " + Seconds.left(lengthS)
                : atS < placed.endS() ? Seconds.left(placed.endS() - atS) + " left" : "its time has passed";
        ReadAloud reading = walk.reading();
        boolean open = reading != null && reading.speaking() && placed.equals(reading.due(atS));
        return new Words(
                ShowLookup.word(placed.kind()),
                words.remark(placed.remarkId())
                        .map(r -> r.words(placed.form() == RemarkForm.SHORT))
                        .orElse(placed.remarkId()),
                open ? "reading, " + when : when,
                WalkBar.steps(gone),
                open);
    }

    private String hint() {
        if (walk.timer() != null) {
            return "Space as each figure begins, and once more as the last one ends. ← takes a press back, P stops";
        }
        if (walk.reading() != null) {
            return "S as you start and finish each remark, or just Enter as you finish. Space pauses, R ends the run";
        }
        return "Space plays, ← → figures, comma and full stop seconds, + − speed, A act, V variant, W times, N note, P time a pass,"
                + " R practise";
    }
}

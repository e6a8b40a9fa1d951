package crowdline.console.walk;

import crowdline.console.live.SmallShow;
import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.FigureNote;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The made-up show's act of three figures of ten seconds, flown straight to the right at 50 m/s, climbing 10 m/s, so that
 * every number shown can be counted by hand.
 */
public final class SmallTour implements Passes, Notes {
    final List<Pass> passes = new ArrayList<>();
    private List<FigureNote> notes = List.of();
    /** How many passes the times were learned from. */
    int taught;

    /** A walk through it. */
    public Walk walk() {
        return walk(SmallShow.show().acts().get(0));
    }

    /** A walk through acts of the same figures. */
    Walk walk(Act... acts) {
        return walk(new Catalogue(List.of()), false, acts);
    }

    /** The same where the figures are those of a catalogue, and are only timed. */
    Walk timed(Catalogue catalogue) {
        return walk(catalogue, true, SmallShow.show().acts().get(0));
    }

    private Walk walk(Catalogue catalogue, boolean timed, Act... acts) {
        List<Tour> tours = Arrays.stream(acts)
                .flatMap(act -> act.variants().stream().map(v -> {
                    Flight flown = flight(v.order());
                    Flight flight = timed ? new Flight("a1", "full", flown.figures(), List.of(), List.of()) : flown;
                    return new Tour(
                            act,
                            v,
                            () -> flight,
                            times(v.order()),
                            () -> timed ? ActSheet.NONE : ActSheet.of(flight, 150.0, Outline.BIPLANE),
                            taught);
                }))
                .toList();
        ShowLookup words =
                new ShowLookup(SmallShow.show(), catalogue, t -> new SpokenTime(4, 3.5, 4.5), (a, v) -> ActSheet.NONE);
        return new Walk(tours, words, SmallTour::plan, this, this, () -> Instant.parse("2026-06-06T12:00:00Z"));
    }

    private static ActTimes times(List<String> ids) {
        List<FigureTime> times = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            times.add(new FigureTime(ids.get(i), 10 * i, 10, 9, 11));
        }
        return new ActTimes("a1", "full", times);
    }

    private static Flight flight(List<String> ids) {
        List<FigureFlight> figures = new ArrayList<>();
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            double startS = 10.0 * i;
            figures.add(new FigureFlight(
                    ids.get(i),
                    ids.get(i),
                    true,
                    true,
                    startS,
                    startS + 10,
                    50,
                    50,
                    50,
                    50,
                    0,
                    300,
                    1,
                    1,
                    0,
                    0,
                    0,
                    0,
                    0,
                    List.of(
                            new ElementFlight(
                                    0,
                                    new Element.Arc(Element.Way.PULL, 90.0, null, Element.Size.TIGHTEST, 0, 1),
                                    startS,
                                    startS,
                                    startS + 4,
                                    new Attitude(0, 0),
                                    new Attitude(0, 0)),
                            new ElementFlight(
                                    1,
                                    new Element.Line(Element.Until.SECONDS, 1, 1),
                                    startS + 4,
                                    startS + 4,
                                    startS + 10,
                                    new Attitude(0, 0),
                                    new Attitude(0, 0)))));
        }
        for (int i = 0; i <= 10 * ids.size(); i++) {
            samples.add(
                    new Sample(i, new Vec(50 * i - 500, 100, 10 * i), 50, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 0, 0));
        }
        return new Flight("a1", "full", figures, samples, List.of());
    }

    /** The call of the second figure from 5 to 8.5 s, a fact from 12 to 16. */
    private static Plan plan(Act act, ActTimes times) {
        return new Plan(
                List.of(
                        new Placed("r-call-2", "f2", RemarkKind.CALL, RemarkForm.FULL, 5, 8.5, false),
                        new Placed("r-fact-1", "f1", RemarkKind.FACT, RemarkForm.FULL, 12, 16, false)),
                List.of(),
                0,
                0,
                true);
    }

    @Override
    public List<Pass> of(String actId, String variant) {
        return passes.stream().filter(p -> p.variant().equals(variant)).toList();
    }

    @Override
    public void add(Pass pass) {
        passes.add(pass);
    }

    @Override
    public List<FigureNote> all() {
        return notes;
    }

    @Override
    public void keep(List<FigureNote> next) {
        notes = next;
    }
}

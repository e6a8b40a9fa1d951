package crowdline.paper;

import crowdline.flight.Flight;
import crowdline.loaded.ActOrigins;
import crowdline.loaded.ActPlans;
import crowdline.loaded.ActPlans.Planned;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Hour;
import crowdline.patter.Placed;
import crowdline.sheet.page.Counting;
import crowdline.sheet.still.PaperStill;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.figure.Figure;
import crowdline.sight.ActSheet;
import crowdline.sight.picture.Flown;
import crowdline.sight.sketch.Sketches;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An act with what is needed of it on paper.
 *
 * @param number of the act in the running order, from 1
 * @param times of its figures, in the order flown
 */
record PaperAct(
        int number, LoadedShow loaded, ShowLookup lookup, Planned planned, Flight flight, List<FigureTime> times) {

    PaperAct {
        times = List.copyOf(times);
    }

    /** The acts asked for that can be put on paper, planned one after the other. */
    static List<PaperAct> of(Wanted wanted, Counting count) throws NothingOnPaper {
        LoadedShow loaded = wanted.loaded();
        List<Act> usable = new ArrayList<>();
        NothingOnPaper why = NothingOnPaper.noActs();
        for (Act act : wanted.acts()) {
            count.is(wanted.acts().indexOf(act), wanted.acts().size());
            Optional<String> reason = reason(wanted, act);
            if (reason.isEmpty()) {
                usable.add(act);
                // What takes long is done here, an act at a time, so that it can be stopped between two.
                loaded.prediction(act.id(), wanted.chosen().apply(act).name()).ifPresent(Prediction::times);
            } else {
                why = new NothingOnPaper(reason.get());
            }
        }
        if (usable.isEmpty()) {
            throw why;
        }
        ShowLookup lookup = loaded.words();
        List<PaperAct> all = new ArrayList<>();
        for (Planned planned : ActPlans.of(loaded, usable, wanted.chosen())) {
            count.is(all.size(), usable.size());
            Act act = planned.act();
            Prediction prediction =
                    loaded.prediction(act.id(), planned.variant().name()).orElseThrow();
            int number = loaded.show().acts().indexOf(act) + 1;
            all.add(new PaperAct(
                    number,
                    loaded,
                    lookup,
                    planned,
                    prediction.flight(),
                    prediction.times().figures()));
        }
        return all;
    }

    private static Optional<String> reason(Wanted wanted, Act act) {
        String variant = wanted.chosen().apply(act).name();
        if (act.inOrder(wanted.chosen().apply(act)).isEmpty()) {
            return Optional.of(
                    "the act " + act.id() + " has no figures in the variant " + variant + "; add figures to it first");
        }
        return wanted.loaded().prediction(act.id(), variant).isPresent()
                ? Optional.empty()
                : Optional.of("the act " + act.id()
                        + " cannot be predicted, so nothing is known of its times; crowdline check says why");
    }

    Show show() {
        return loaded.show();
    }

    Act act() {
        return planned.act();
    }

    String variant() {
        return planned.variant().name();
    }

    String pilot() {
        return performer().map(Performer::name).orElse(act().performer());
    }

    Optional<Performer> performer() {
        return show().performer(act().performer());
    }

    String aircraft() {
        return show().aircraft(act().airframe()).map(Aircraft::name).orElse(act().airframe());
    }

    String slot() {
        return Hour.toTheMinute(act().slotStart());
    }

    double totalS() {
        return times.isEmpty() ? 0 : times.get(times.size() - 1).endS();
    }

    String name(int figure) {
        return lookup.name(act(), variant(), times.get(figure).figureId());
    }

    String look(int figure) {
        return lookup.look(act(), times.get(figure).figureId());
    }

    /** How the name of a figure is said, or empty if as it is written or if nobody knows. */
    String sayIt(int figure) {
        return act().figure(times.get(figure).figureId())
                .filter(f -> f.title() == null)
                .flatMap(f -> loaded.catalogue().with(show().figures()).find(f.figure()))
                .map(e -> e.sayIt())
                .filter(said -> !said.equalsIgnoreCase(name(figure)))
                .orElse("");
    }

    /** How the crowd sees a figure, with all that fly it; as it is sketched if it is only timed. */
    PaperStill still(int figure) {
        ActSheet sheet = lookup.sheet(act().id(), variant());
        String name =
                act().figure(times.get(figure).figureId()).map(Figure::figure).orElse("");
        Flown flown = flight.figures().get(figure).simulated() ? sheet.flown(figure) : Flown.NONE;
        Flown seen =
                flown.isEmpty() ? lookup.sketch(act(), times.get(figure).figureId()) : Sketches.inCompany(name, flown);
        return new PaperStill(seen, sheet.outline());
    }

    /** What is planned to be said while a figure is flown; −1 for before the first. */
    List<Placed> said(int figure) {
        double from = figure < 0 ? Double.NEGATIVE_INFINITY : times.get(figure).startS();
        double to = figure + 1 < times.size() ? times.get(figure + 1).startS() : Double.POSITIVE_INFINITY;
        return planned.plan().placed().stream()
                .filter(p -> p.startS() >= from && p.startS() < to)
                .toList();
    }

    ActOrigins origins() {
        return ActOrigins.of(show(), act(), flight, loaded.catalogue().with(show().figures()), loaded.passes());
    }
}

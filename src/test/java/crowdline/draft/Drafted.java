package crowdline.draft;

import crowdline.arrange.ShowArranging;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Workers;
import crowdline.flight.moment.Moment;
import crowdline.list.ListReader;
import crowdline.list.line.FigureList;
import crowdline.loaded.LoadedShow;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Acts made from lists, with a first draft of their words. */
public record Drafted(Show show, Act act, Flight flight) {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final ShowArranging ARRANGING = new ShowArranging(CATALOGUE);

    public static Show empty() {
        return ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
    }

    static Show with(String performer, String... facts) {
        Show none = empty();
        List<SourcedFact> sourced = new ArrayList<>();
        for (String fact : facts) {
            sourced.add(new SourcedFact(fact, "the pilot's own form"));
        }
        return new Show(
                none.title(),
                none.date(),
                none.venue(),
                none.air(),
                List.of(),
                List.of(new Performer("p", performer, null, sourced)),
                List.of(),
                List.of());
    }

    public static Drafted of(Show before, String kind, String performer, String list) {
        return of(before, kind, performer, list, DraftWords.SHARE);
    }

    static Drafted of(Show before, String kindName, String performer, String list, double share) {
        ShowArranging.Made made = arranged(before, kindName, performer, list);
        return of(made.show(), made.act(), share);
    }

    public static ShowArranging.Made arranged(Show before, String kindName, String performer, String list) {
        Kinds.Named named = KindsFile.shipped().counted(kindName);
        Kind kind = named.kind();
        FigureList read = new ListReader(CATALOGUE).read(list);
        ShowArranging.Making making = id -> kind.flies()
                ? kind.airframe(id, kind.name(), Sliders.TYPICAL)
                : new TimedAircraft(id, kind.name(), kind, named.number());
        return ARRANGING.add(
                before, read, making, new ShowArranging.About("An act", performer, LocalTime.of(14, 0), null));
    }

    static Drafted of(Show show, Act act, double share) {
        Flight flight = new Predictor(show, CATALOGUE, act, act.variants().get(0)).predict();
        Act drafted = new DraftWords(Pace.DEFAULT, share).of(show, act, flight, CATALOGUE);
        List<Act> acts = new ArrayList<>(show.acts());
        acts.replaceAll(a -> a.id().equals(act.id()) ? drafted : a);
        return new Drafted(show.withActs(acts, show.remarks()), drafted, flight);
    }

    List<Remark> remarks() {
        return act.figures().stream().flatMap(f -> f.remarks().stream()).toList();
    }

    List<String> texts() {
        return remarks().stream().map(Remark::text).toList();
    }

    List<String> of(String figureId) {
        return act.figure(figureId).orElseThrow().remarks().stream()
                .map(Remark::text)
                .toList();
    }

    /** The plan as the program makes it for the day, with times from varied flights. */
    Plan plan() {
        return loaded().plan(act, times());
    }

    private LoadedShow loaded() {
        return new LoadedShow(show, CATALOGUE, Paces.DEFAULT, Workers.ALONE, LoadedShow.FIRST_FLIGHTS);
    }

    private ActTimes times() {
        return loaded().prediction(act.id(), "full").orElseThrow().times();
    }

    double startS(String figureId) {
        return times().figures().stream()
                .filter(f -> f.figureId().equals(figureId))
                .findFirst()
                .orElseThrow()
                .startS();
    }

    /** Whether the hardest pull of the figure flown at a time comes within so many seconds of it. */
    boolean heaviestNear(double tS, double within) {
        FigureFlight figure = flownAt(tS);
        return flight.samples().stream()
                .filter(s -> Math.abs(s.tS() - tS) <= within && s.tS() >= figure.startS() && s.tS() <= figure.endS())
                .anyMatch(s -> s.g() > figure.greatestG() - 0.3);
    }

    /** Whether it climbs at a time or did until so many seconds before. */
    boolean climbsNear(double tS, double within) {
        return flight.samples().stream()
                .filter(s -> s.tS() <= tS && s.tS() >= tS - within)
                .anyMatch(s -> s.nose().z() > 0.3);
    }

    private FigureFlight flownAt(double tS) {
        return flight.figures().stream()
                .filter(f -> f.startS() <= tS && tS <= f.endS())
                .findFirst()
                .orElseThrow();
    }

    /** Remarks placed over a moment worth watching. */
    List<String> overMoments(Plan plan) {
        List<String> over = new ArrayList<>();
        for (FigureTime time : times().figures()) {
            for (Moment moment : time.moments().moments()) {
                double atS = time.startS() + moment.afterS();
                for (Placed placed : plan.placed()) {
                    if (moment.worthWatching() && placed.startS() < atS + 1.4 && placed.endS() > atS - 0.4) {
                        over.add(placed.remarkId() + " over " + moment.name().words());
                    }
                }
            }
        }
        return over;
    }
}

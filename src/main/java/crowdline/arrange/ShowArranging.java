package crowdline.arrange;

import crowdline.flight.air.Air;
import crowdline.list.line.FigureList;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Puts an act made from a list into a show. */
public final class ShowArranging {
    private static final double LEAST_SLOT_MINUTES = 1;
    /** By the kind of aircraft: which figure is meant by another's name. */
    private static final Map<String, Map<String, String>> MEANT = Map.of(
            Kinds.PARACHUTISTS,
            Map.of("landing", "canopy landing"),
            Kinds.FORMATION,
            Map.of("loop", "formation loop", "barrel roll", "formation roll", "aileron roll", "formation roll"));

    private final Catalogue catalogue;

    public ShowArranging(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * What is known of an act beside its list.
     *
     * @param title how it is announced
     * @param performer who flies it, or null if nobody said
     * @param slotStart when it begins by the clock at the venue
     * @param minutes how long all of it takes, above 0, or null if nobody said
     */
    public record About(
            String title,
            @Nullable String performer,
            LocalTime slotStart,
            @Nullable Double minutes) {}

    /**
     * A show with the act in it.
     *
     * @param show the show
     * @param act the act that was added
     * @param arranged how it was made
     */
    public record Made(Show show, Act act, Arranged arranged) {}

    /** A show with no act yet, a place nothing is known of, and an incident page agreed with nobody. */
    public static Show empty(String title, LocalDate date, ZoneId zone, @Nullable Incident incident) {
        Venue venue = new Venue("our airfield", null, null, null, null, null, zone, Venue.Limits.NONE);
        return new Show(title, date, venue, DayAir.STANDARD, List.of(), List.of(), List.of(), List.of())
                .withIncident(incident);
    }

    /**
     * Adds an act at the end of the running order.
     *
     * @param aircraft what flies it, with an id that is made unlike those the show has
     */
    public Made add(Show show, FigureList list, Making aircraft, About about) {
        Set<String> ids = show.airframes().stream().map(Aircraft::id).collect(Collectors.toCollection(HashSet::new));
        Aircraft flies = aircraft.as(FreshId.of(about.title() + " aircraft", ids));
        Catalogue all = catalogue.with(show.figures());
        Arranger arranger = new Arranger(all);
        List<Figure> asked = meant(arranger.figures(list), flies);
        Arranged arranged = flies instanceof Airframe airframe
                ? arranger.flown(asked, airframe, show.venue().limits(), Air.of(show.air(), show.venue()))
                : arranger.timed(asked, about.minutes());
        Set<String> performers =
                show.performers().stream().map(Performer::id).collect(Collectors.toCollection(HashSet::new));
        String name = about.performer() == null ? "the pilot" : about.performer();
        Performer performer = show.performers().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseGet(() -> new Performer(FreshId.of(name, performers), name, null, List.of()));
        Set<String> acts = show.acts().stream().map(Act::id).collect(Collectors.toCollection(HashSet::new));
        Act act = new Act(
                FreshId.of(about.title(), acts),
                about.title(),
                performer.id(),
                flies.id(),
                about.slotStart(),
                about.minutes() == null
                        ? Math.max(Math.ceil(arranged.seconds() / 60) + 1, LEAST_SLOT_MINUTES)
                        : about.minutes(),
                arranged.entry(),
                arranged.figures(),
                List.of(new Variant(
                        "full",
                        null,
                        arranged.figures().stream().map(Figure::id).toList())),
                List.of());
        return new Made(with(show, flies, performer, act), act, arranged);
    }

    /** What a landing is of parachutists, and a loop of a formation, is another figure. */
    private static List<Figure> meant(List<Figure> asked, Aircraft flies) {
        Map<String, String> meant = flies instanceof TimedAircraft timed
                ? MEANT.getOrDefault(timed.kind().name(), Map.of())
                : Map.of();
        return asked.stream()
                .map(f -> meant.containsKey(f.figure()) ? f.flownAs(meant.get(f.figure())) : f)
                .toList();
    }

    /** How an aircraft is made once it has an id. */
    public interface Making {
        Aircraft as(String id);
    }

    private static Show with(Show show, Aircraft aircraft, Performer performer, Act act) {
        List<Aircraft> aircrafts = new ArrayList<>(show.airframes());
        aircrafts.add(aircraft);
        List<Performer> performers = new ArrayList<>(show.performers());
        if (!performers.contains(performer)) {
            performers.add(performer);
        }
        return show.withAircraft(aircrafts)
                .withPerformers(performers)
                .withActs(inOrder(show.acts(), act), show.remarks());
    }

    /** The acts with another: ahead of the first that begins later, as the running order has it. */
    private static List<Act> inOrder(List<Act> before, Act act) {
        List<Act> acts = new ArrayList<>(before);
        int at = acts.size();
        while (at > 0 && acts.get(at - 1).slotStart().isAfter(act.slotStart())) {
            at--;
        }
        acts.add(at, act);
        return acts;
    }
}

package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Lists of figures as somebody might send them, from a seed: 6 to 18 figures that the kind can fly at all, in any order,
 * some with a place or a heading, with and without take-off, landing, limits and up to 20 kt of wind.
 */
final class RandomLists {
    private static final List<End> ENDS = List.of(End.LEFT, End.CENTRE, End.RIGHT);

    private final Random random;
    private final Catalogue catalogue = CatalogueFile.shipped();
    private final Map<String, List<CatalogueEntry>> flown = new HashMap<>();

    /** One list with what it is laid out for. */
    record Case(Kind kind, FigureTrial trial, Area area, List<Wish> wishes) {
        LaidOut laid() {
            return new Layout(trial, area).of(wishes);
        }
    }

    RandomLists(long seed) {
        random = new Random(seed);
    }

    static List<Kind> kinds() {
        return KindsFile.shipped().all().stream().filter(Kind::flies).toList();
    }

    Case next(Kind kind) {
        Airframe airframe = kind.airframe("a", "The aircraft", Sliders.TYPICAL);
        List<CatalogueEntry> from = flown.computeIfAbsent(kind.name(), k -> flownBy(airframe));
        List<Wish> wishes = new ArrayList<>();
        if (random.nextBoolean()) {
            wishes.add(onTheGround("take-off", Wish.Role.TAKE_OFF));
        }
        int figures = 6 + random.nextInt(13);
        for (int i = 0; i < figures; i++) {
            wishes.add(wish("figure-" + i, from.get(random.nextInt(from.size()))));
        }
        if (random.nextBoolean()) {
            wishes.add(onTheGround("landing", Wish.Role.LANDING));
        }
        DayAir day = new DayAir(1013.25, 15, random.nextInt(360), random.nextInt(20), List.of(), null);
        FigureTrial trial = new FigureTrial(airframe, new Air(new StandardAtmosphere(), Wind.of(day, 90)));
        Venue.Limits limits = random.nextBoolean()
                ? new Venue.Limits(300.0 + random.nextInt(400), null, null, null)
                : Venue.Limits.NONE;
        Area area = Area.of(limits, Units.mpsFromKt(airframe.usual().passKt()), trial.stallMps(0));
        return new Case(kind, trial, area, wishes);
    }

    private Wish wish(String id, CatalogueEntry entry) {
        End end = random.nextInt(5) == 0 ? ENDS.get(random.nextInt(ENDS.size())) : null;
        Boolean toRight = random.nextInt(8) == 0 ? Boolean.valueOf(random.nextBoolean()) : null;
        return wish(id, entry, end, toRight, Wish.Role.FIGURE);
    }

    private Wish onTheGround(String name, Wish.Role role) {
        return wish(name, catalogue.find(name).orElseThrow(), null, null, role);
    }

    private static Wish wish(
            String id, CatalogueEntry entry, @Nullable End end, @Nullable Boolean toRight, Wish.Role role) {
        return new Wish(
                id,
                entry.name(),
                entry.elements(),
                false,
                entry.enters(),
                end,
                null,
                toRight,
                null,
                null,
                null,
                role,
                null);
    }

    /** What it can fly alone, in still air, from its usual speed. */
    private List<CatalogueEntry> flownBy(Airframe airframe) {
        FigureTrial trial = new FigureTrial(airframe, Air.STANDARD);
        List<CatalogueEntry> can = new ArrayList<>();
        for (CatalogueEntry entry : catalogue.entries()) {
            EntrySpeed enters = entry.enters();
            Double kt = enters == null ? null : enters.kt(airframe.usual(), airframe.stallKt());
            if (kt == null || entry.elements().isEmpty() || entry.name().equals("reposition")) {
                continue;
            }
            FlightState from = FlightState.along(new Vec(0, 0, 900), Units.mpsFromKt(kt), true);
            if (trial.drawn(entry.elements(), from).flown()) {
                can.add(entry);
            }
        }
        return can;
    }
}

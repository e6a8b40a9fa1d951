package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Predictor;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * What only flying it shows of a show: what cannot be flown as it is written, and numbers that look like a slip of the hand against it.
 * Judgement, no source, says how far off counts.
 */
public final class FlownCheck {
    /** The code of what is found in a show too long to be flown for this. */
    public static final String TOO_LONG = "too-long-a-show";

    /** So much longer than its slot no act is by the width of a prediction alone; by judgement, no source. */
    private static final double MOST_OF_SLOT = 1.1;

    /** An act so much shorter than its slot was meant otherwise. */
    private static final double LEAST_OF_SLOT = 0.1;
    /** A remark or a quiet that begins so long after its figure's end is about something else. */
    private static final double AFTER_FIGURE_S = 15;
    /** Beyond this nobody sees an aircraft from the crowd line. */
    private static final double OUT_OF_SIGHT_M = 12_000;

    /** A day of flying, every variant counted: more than any show has, and what the memory holds. */
    private static final double MOST_FLOWN_S = 24 * 3600;

    private static final double TEN = 10;
    private static final double HIGHEST_ENTRY_FT = 12_000;

    private final Show show;
    private final Catalogue catalogue;
    private final BiFunction<Act, Variant, Flight> flights;
    /** Two variants that fly one figure alike say it once. */
    private final Set<Finding> found = new LinkedHashSet<>();

    private FlownCheck(Show show, Catalogue catalogue, BiFunction<Act, Variant, Flight> flights) {
        this.show = show;
        this.catalogue = catalogue;
        this.flights = flights;
    }

    /** Everything there is to say about a show: by its rules, and by flying each variant of each act. */
    public static List<Finding> of(Show show, Catalogue catalogue) {
        List<Finding> all = new ArrayList<>(ShowRules.check(show, catalogue));
        FlownCheck check = new FlownCheck(
                show, catalogue, (act, variant) -> new Predictor(show, catalogue, act, variant).predict());
        check.everyVariant((act, variant, flight, path) -> {
            check.predicted(act, flight, path);
            check.slips(act, variant, flight, path);
            check.moments(act, flight, path);
        });
        all.addAll(check.found);
        return all;
    }

    /** Numbers that look like a slip, without what the prediction itself finds. */
    static List<Finding> slips(LoadedShow loaded) {
        Show show = loaded.show();
        FlownCheck check = new FlownCheck(
                show,
                loaded.catalogue(),
                (act, variant) -> show.act(act.id()).filter(act::equals).isPresent()
                        ? loaded.prediction(act.id(), variant.name())
                                .orElseThrow()
                                .flight()
                        : new Predictor(show, loaded.catalogue(), act, variant).predict());
        check.everyVariant((act, variant, flight, path) -> {
            check.slips(act, variant, flight, path);
            check.moments(act, flight, path);
        });
        return List.copyOf(check.found);
    }

    /** Told of a variant of an act, with the path of the act. */
    private interface Variants {
        void see(Act act, Variant variant, Flight flight, String path);
    }

    private void everyVariant(Variants seen) {
        double totalS = 0;
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            if (show.canBePredicted(act)) {
                for (Variant variant : act.variants()) {
                    Flight flight = flights.apply(act, variant);
                    totalS += flight.totalS();
                    if (totalS > MOST_FLOWN_S) {
                        found.add(tooLong(act));
                        return;
                    }
                    seen.see(act, variant, flight, "acts[" + a + "]");
                }
            }
        }
    }

    private static Finding tooLong(Act act) {
        return new Finding(
                Severity.ERROR,
                TOO_LONG,
                "the acts up to \"" + act.title()
                        + "\" are predicted to last more than 24 hours together, every variant"
                        + " counted; that is the limit, so check their times or split the show",
                "acts");
    }

    private void predicted(Act act, Flight flight, String path) {
        for (FlightFinding f : flight.findings()) {
            if (f.severity() == Severity.ERROR) {
                found.add(new Finding(f.severity(), f.code(), f.message(), path(act, f.figureId(), path)));
            }
        }
    }

    private void slips(Act act, Variant variant, Flight flight, String path) {
        LaidOutCheck.of(act, flight, path).ifPresent(found::add);
        ToldTimesCheck.of(act, flight, path).ifPresent(found::add);
        found.addAll(ToldNotFlown.of(act, flight, catalogue, id -> path(act, id, path)));
        if (isBelowGround(flight)) {
            entry(act, variant, flight, path + ".entry.heightFt");
        }
        slot(act, variant, flight, path + ".slotMinutes");
        for (FigureFlight flown : flight.figures()) {
            act.figure(flown.figureId()).ifPresent(f -> times(f, flown, path(act, f.id(), path)));
            outOfSight(flown, path(act, flown.figureId(), path));
        }
    }

    /** Remarks tied to moments that their figures do not have; without samples nothing is known of those. */
    private void moments(Act act, Flight flight, String path) {
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElse(null);
            if (figure != null && figure.remarks().stream().anyMatch(Remark::isTied)) {
                TiedCheck.of(figure, flown, flight.samples(), path(act, flown.figureId(), path))
                        .forEach(found::add);
            }
        }
    }

    private static String path(Act act, String figureId, String path) {
        for (int f = 0; f < act.figures().size(); f++) {
            if (act.figures().get(f).id().equals(figureId)) {
                return path + ".figures[" + f + "]";
            }
        }
        return path;
    }

    private static boolean isBelowGround(Flight flight) {
        return lowestFt(flight) < 0;
    }

    private static double lowestFt(Flight flight) {
        return flight.figures().stream()
                .filter(FigureFlight::isPlaced)
                .mapToDouble(f -> Units.ftFromM(f.lowestM()))
                .min()
                .orElse(0);
    }

    /** The height of entry, if ten times it would keep the act above the ground. */
    private void entry(Act act, Variant variant, Flight flight, String path) {
        Placing is = act.entry();
        if (is == null || variant.entry() != null) {
            return;
        }
        double meantFt = is.heightFt() * TEN;
        if (is.heightFt() <= 0 || meantFt > HIGHEST_ENTRY_FT) {
            return;
        }
        Placing meant = new Placing(is.alongM(), is.awayM(), meantFt, is.kt(), is.heading());
        if (!isBelowGround(flights.apply(entering(act, meant), variant))) {
            add(
                    "entry-too-low",
                    path,
                    "the heightFt is %,.0f, from which variant \"%s\" comes to %,.0f ft, below the ground; from %,.0f it"
                            + " does not: was that meant?",
                    is.heightFt(),
                    variant.name(),
                    lowestFt(flight),
                    meantFt);
        }
    }

    private static Act entering(Act act, Placing entry) {
        return new Act(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                entry,
                act.figures(),
                act.variants(),
                act.remarks());
    }

    private void slot(Act act, Variant variant, Flight flight, String path) {
        double minutes = flight.totalS() / 60;
        if (isOverrun(act, flight)) {
            add(
                    "act-against-slot",
                    path,
                    "variant \"%s\" is predicted to last %.1f minutes, longer than its slot of %s;"
                            + " ask the pilot what to leave out, or the display director for more time",
                    variant.name(),
                    minutes,
                    plain(act.slotMinutes()));
        } else if (minutes < LEAST_OF_SLOT * act.slotMinutes() && minutes > 0) {
            add(
                    "act-against-slot",
                    path,
                    "the slotMinutes are %s; variant \"%s\" is predicted to last %.1f minutes, so check both",
                    plain(act.slotMinutes()),
                    variant.name(),
                    minutes);
        }
    }

    /** Whether an act is predicted to last longer than its slot by more than predictions are off. */
    static boolean isOverrun(Act act, Flight flight) {
        return flight.totalS() > MOST_OF_SLOT * act.slotMinutes() * 60;
    }

    private void times(Figure figure, FigureFlight flown, String path) {
        double latestS = flown.durationS() + AFTER_FIGURE_S;
        for (int r = 0; r < figure.remarks().size(); r++) {
            Remark remark = figure.remarks().get(r);
            Double earliestS = remark.earliestS();
            if (remark.isTied()) {
                continue;
            }
            if (earliestS != null && earliestS > latestS) {
                late(path + ".remarks[" + r + "].earliestS", "earliestS", earliestS, flown);
            }
            Double latest = remark.latestS();
            if (latest != null && latest > 2 * latestS) {
                late(path + ".remarks[" + r + "].latestS", "latestS", latest, flown);
            }
        }
        for (int q = 0; q < figure.quiets().size(); q++) {
            Quiet quiet = figure.quiets().get(q);
            Double toS = quiet.toS();
            if (quiet.fromS() >= flown.durationS()) {
                late(path + ".quiets[" + q + "].fromS", "fromS", quiet.fromS(), flown);
            } else if (toS != null && toS > latestS) {
                late(path + ".quiets[" + q + "].toS", "toS", toS, flown);
            }
        }
    }

    private void late(String path, String key, double is, FigureFlight flown) {
        add(
                "after-its-figure",
                path,
                "the %s is %s; \"%s\" is predicted to last %.1f s, so check it",
                key,
                plain(is),
                flown.name(),
                flown.durationS());
    }

    private void outOfSight(FigureFlight flown, String path) {
        double farM = Math.hypot(flown.exitAlongM(), flown.exitAwayM());
        if (farM > OUT_OF_SIGHT_M) {
            add(
                    "out-of-sight",
                    path,
                    "%s ends %,.0f km from the datum, out of sight of the crowd; check its lengths and speeds",
                    flown.name(),
                    farM / 1000);
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.UK, "%,.0f", value) : String.valueOf(value);
    }

    private void add(String code, String path, String what, Object... values) {
        found.add(new Finding(Severity.WARNING, code, String.format(Locale.UK, what, values), path));
    }
}

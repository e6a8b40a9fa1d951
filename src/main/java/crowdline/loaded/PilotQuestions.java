package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.ActOrigins.What;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to ask the pilot about an act: what was assumed, the most important first. How important a question is, is how many
 * seconds of the act its answer may move, by judgement; what changes heights counts by the height.
 */
public final class PilotQuestions {
    /** More than that nobody answers. */
    public static final int MOST = 12;

    /** A figure that may be another one. */
    private static final double OTHER_FIGURE_S = 60;
    /** Seconds that an entry speed moves for each metre of height its figure takes: a tenth of the speed is a fifth of the height. */
    private static final double PER_METRE_S = 0.04;

    private static final double LOWEST_S = 30;
    private static final int MOST_NAMED = 4;
    /** Its answer may change every figure behind it. */
    private static final double NOT_KEPT_S = 40;

    private static final double TURNS_S = 15;
    private static final double PLACES_S = 12;
    private static final double POWER_S = 14;
    private static final double ROLL_S = 10;
    private static final double NAME_S = 5;
    private static final double FACTS_S = 6;
    private static final double IN_MINUTES_S = 100;
    /** How much of the way between figures may be flown otherwise. */
    private static final double OF_TRANSITS = 0.3;

    /**
     * One question.
     *
     * @param group what it is about: figures of one group are asked together
     * @param text to be sent as it stands
     * @param seconds how important it is
     */
    public record Question(String group, String text, double seconds) {}

    private final List<Question> all = new ArrayList<>();
    private final Act act;
    private final Flight flight;
    private final Catalogue catalogue;
    private final ActOrigins origins;

    private PilotQuestions(Act act, Flight flight, Catalogue catalogue, ActOrigins origins) {
        this.act = act;
        this.flight = flight;
        this.catalogue = catalogue;
        this.origins = origins;
    }

    /** At most {@value #MOST} questions, group by group, the most important group first and in it the most important question. */
    public static List<Question> of(Show show, Act act, Flight flight, Catalogue catalogue, ActOrigins origins) {
        if (origins.assumed().isEmpty()) {
            return List.of();
        }
        PilotQuestions asking = new PilotQuestions(act, flight, catalogue, origins);
        asking.unsure();
        asking.undrawn();
        asking.notKept();
        asking.slot();
        asking.times();
        asking.speeds();
        asking.heights(show);
        asking.turns();
        asking.ways();
        asking.aircraft(show);
        asking.performer(show);
        List<Question> chosen = asking.all.stream()
                .sorted(Comparator.comparingDouble(Question::seconds).reversed())
                .limit(MOST)
                .toList();
        Map<String, List<Question>> groups = new LinkedHashMap<>();
        chosen.forEach(
                q -> groups.computeIfAbsent(q.group(), g -> new ArrayList<>()).add(q));
        return groups.values().stream().flatMap(List::stream).toList();
    }

    private void add(String group, double seconds, String text, Object... values) {
        all.add(new Question(group, String.format(Locale.UK, text, values), seconds));
    }

    private String name(Figure figure) {
        return catalogue.find(figure.figure()).map(CatalogueEntry::name).orElse(figure.shownName());
    }

    /** The figures that a kind of number was assumed of, those of one name together. */
    private Map<String, List<Figure>> assumed(What what) {
        Map<String, List<Figure>> byName = new LinkedHashMap<>();
        origins.assumed().stream()
                .filter(n -> n.what() == what)
                .flatMap(n -> act.figure(Objects.requireNonNull(n.figureId())).stream())
                .forEach(f -> byName.computeIfAbsent(PilotsName.of(f, catalogue), n -> new ArrayList<>())
                        .add(f));
        return byName;
    }

    private FigureFlight flown(Figure figure) {
        return flight.figure(figure.id()).orElseThrow();
    }

    private void unsure() {
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElseThrow();
            Asked asked = figure.asked();
            if (asked == null || asked.sure() || !Undrawn.of(asked, flown).isEmpty()) {
                continue;
            }
            if (asked.isOfLog()) {
                add("Figures", OTHER_FIGURE_S, "%s", inTheLog(figure, asked));
            } else if (catalogue.find(figure.figure()).isEmpty()) {
                add(
                        "Figures",
                        OTHER_FIGURE_S,
                        "What do you fly in “%s”, and how long does it take?",
                        PilotsName.wrote(asked));
            } else {
                add(
                        "Figures",
                        OTHER_FIGURE_S,
                        "You wrote “%s”. We took it for “%s”: is it?",
                        PilotsName.wrote(asked),
                        name(figure));
            }
        }
    }

    /** What was written of a figure and is not in what we draw of it. */
    private void undrawn() {
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElseThrow();
            Asked asked = figure.asked();
            List<String> words = asked == null ? List.of() : Undrawn.of(asked, flown);
            if (asked != null && !words.isEmpty()) {
                String ask = words.stream().anyMatch(Undrawn::hasPlace) ? "where does it come" : "how do you fly it";
                add(
                        "Figures",
                        OTHER_FIGURE_S,
                        "You wrote “%s”. We draw %s without %s: %s?",
                        PilotsName.wrote(asked),
                        asked.sure() ? "it" : "a " + name(figure),
                        Undrawn.quoted(words),
                        ask);
            }
        }
    }

    /** What was told and does not fit with what stands around it. */
    private void notKept() {
        for (NotKept not : NotKept.of(act, flight)) {
            String the = PilotsName.the(PilotsName.of(not.figure(), catalogue));
            String group = not.what() == What.ENTRY_SPEED ? "Speeds" : not.what() == What.HEIGHT ? "Heights" : "Times";
            add(
                    group,
                    NOT_KEPT_S,
                    not.what() == What.TIME
                            ? "You told us that %s takes %s. As we draw it, it takes %s: what do you fly in it?"
                            : "You told us that %s begins at %s. With what stands around it ours begins at %s: which is right?",
                    the,
                    not.toldWords(),
                    not.flownWords());
        }
    }

    /** Of what was found in a flight log: the pilot wrote nothing of it. */
    private String inTheLog(Figure figure, Asked asked) {
        String when = asked.text().substring(Asked.FROM_LOG.length()).split(",", 2)[0];
        if (catalogue.find(figure.figure()).isEmpty()) {
            return "What did you fly in the flight log " + when + "?";
        }
        List<String> names = asked.choices().isEmpty() ? List.of(name(figure)) : asked.choices();
        String either = names.stream().map(n -> "“" + n + "”").collect(Collectors.joining(" or "));
        return "In the flight log, " + when + ": is it " + either + ", or what?";
    }

    /** Of an act that does not fit into the minutes it has. */
    private void slot() {
        if (FlownCheck.isOverrun(act, flight)) {
            add(
                    "Times",
                    flight.totalS() - act.slotMinutes() * 60,
                    "Your slot has %s minutes, and we make it %.1f with all you sent. What do you leave out, or fly faster?",
                    plain(act.slotMinutes()),
                    flight.totalS() / 60);
        }
    }

    private void times() {
        assumed(What.TIME).forEach((name, figures) -> {
            Figure first = figures.get(0);
            boolean unsure = first.asked() != null && !first.asked().sure();
            if (!flown(first).simulated() && !unsure) {
                double seconds = flown(first).durationS();
                add(
                        "Times",
                        seconds * figures.size(),
                        "How long does %s take? We assumed %.0f s.",
                        PilotsName.the(name),
                        seconds);
            }
        });
    }

    private void speeds() {
        assumed(What.ENTRY_SPEED).forEach((name, figures) -> {
            FigureFlight first = flown(figures.get(0));
            double metres = figures.stream()
                    .mapToDouble(f -> flown(f).highestM() - flown(f).lowestM())
                    .sum();
            add(
                    "Speeds",
                    2 + metres * PER_METRE_S,
                    figures.size() == 1
                            ? "How fast do you begin %s? We assumed %.0f kt."
                            : "How fast do you begin each %s? We assumed %.0f kt.",
                    figures.size() == 1 ? PilotsName.the(name) : name,
                    Math.rint(Units.ktFromMps(first.entryMps()) / 5) * 5);
        });
    }

    private void heights(Show show) {
        double lowestM = flight.figures().stream()
                .filter(FigureFlight::simulated)
                .filter(flown ->
                        act.figure(flown.figureId()).filter(f -> !f.transit()).isPresent())
                .mapToDouble(FigureFlight::lowestM)
                .min()
                .orElse(Double.NaN);
        if (show.venue().limits().baseFt() == null
                && !Double.isNaN(lowestM)
                && !assumed(What.HEIGHT).isEmpty()) {
            add(
                    "Heights",
                    LOWEST_S,
                    "What is the lowest you fly in this act? Ours comes down to %,.0f ft.",
                    Math.rint(Units.ftFromM(lowestM) / 10) * 10);
        }
        assumed(What.HEIGHT).forEach((name, figures) -> {
            FigureFlight first = flown(figures.get(0));
            double downM = first.highestM() - first.lowestM();
            boolean spins = figures.stream().anyMatch(f -> turnsOf(f) > 0);
            if (spins) {
                add(
                        "Heights",
                        TURNS_S + downM * PER_METRE_S,
                        "How high do you begin %s? We assumed %,.0f ft.",
                        PilotsName.the(name),
                        Math.rint(Units.ftFromM(first.highestM()) / 100) * 100);
            }
        });
    }

    private double turnsOf(Figure figure) {
        return origins.numbers().stream()
                .filter(n -> n.what() == What.TURNS && figure.id().equals(n.figureId()))
                .mapToDouble(ActOrigins.Value::value)
                .sum();
    }

    private void turns() {
        assumed(What.TURNS)
                .forEach((name, figures) -> add(
                        "Figures",
                        TURNS_S,
                        "How many turns does %s have? We assumed %s.",
                        PilotsName.the(name),
                        plain(turnsOf(figures.get(0)))));
    }

    /** Nobody thinks of minutes in seconds. */
    private static String inWords(double seconds) {
        return seconds < IN_MINUTES_S
                ? String.format(Locale.UK, "%.0f s", seconds)
                : String.format(Locale.UK, "about %.0f minutes", seconds / 60);
    }

    private void ways() {
        List<ActOrigins.Value> transits =
                origins.assumed().stream().filter(n -> n.what() == What.TRANSIT).toList();
        double seconds = transits.stream().mapToDouble(ActOrigins.Value::value).sum();
        if (!transits.isEmpty()) {
            add(
                    "Between the figures",
                    seconds * OF_TRANSITS,
                    transits.size() == 1
                            ? "What do you fly between the figures to turn back, climb or slow down? We put in one such piece,"
                                    + " of %2$s, and would like yours."
                            : "What do you fly between the figures to turn back, climb or slow down? We put in %d such pieces,"
                                    + " %s in all, and would like yours.",
                    transits.size(),
                    inWords(seconds));
        }
        Map<String, List<Figure>> places = assumed(What.PLACE);
        if (places.size() > 1) {
            add(
                    "Between the figures",
                    PLACES_S,
                    "Where along the line do you fly these: %s? You did not say, so we placed them ourselves.",
                    some(List.copyOf(places.keySet())));
        }
    }

    /** The first few of them, and how many more. */
    private static String some(List<String> names) {
        return names.size() <= MOST_NAMED + 1
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMED)) + " and " + (names.size() - MOST_NAMED) + " more";
    }

    private void aircraft(Show show) {
        Airframe airframe = show.airframe(act.airframe()).orElse(null);
        if (airframe == null) {
            return;
        }
        Set<String> assumed = airframe.assumed();
        if (assumed.contains("massKg") || assumed.contains("powerKw")) {
            String power = airframe.engine() instanceof Engine.Propeller propeller
                    ? String.format(
                            Locale.UK,
                            " and %.0f hp (%.0f kW)",
                            Units.hpFromKw(propeller.powerKw()),
                            propeller.powerKw())
                    : "";
            add(
                    "Aircraft",
                    POWER_S,
                    "What does your aircraft weigh as you fly it%s? We assumed %,.0f kg%s.",
                    power.isEmpty() ? "" : ", and how much power does it have",
                    airframe.massKg(),
                    power);
        }
        if (assumed.contains("rollRateDegPerS")) {
            add(
                    "Aircraft",
                    ROLL_S,
                    "How long does one full roll take at full stick? We assumed %.1f s.",
                    360 / airframe.rollRateDegPerS());
        }
    }

    private void performer(Show show) {
        Performer performer = show.performer(act.performer()).orElse(null);
        if (performer == null) {
            return;
        }
        if (performer.sayAs() == null) {
            add("Words", NAME_S, "How do you say your name?");
        }
        if (performer.facts().isEmpty()) {
            add("Words", FACTS_S, "What may we tell the crowd about you and the aircraft? Three sentences are plenty.");
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.format(Locale.UK, "%.0f", number) : String.valueOf(number);
    }
}

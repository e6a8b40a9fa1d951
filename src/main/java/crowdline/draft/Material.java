package crowdline.draft;

import crowdline.draft.Line.Role;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FlownPath;
import crowdline.sight.fact.CrowdFact;
import crowdline.sight.fact.CrowdFacts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Everything there is to say in an act beside its calls, with how much it is wanted. */
final class Material {
    /** How much of a figure's interest each of its lines has; judgement, no source. */
    private static final double WHAT = 0.9;

    private static final double WHY = 0.6;
    private static final double FEELS = 0.5;
    private static final double HANDS = 0.35;
    private static final double BEST_TELLING = 12;
    /** What is said beside the figures, in places made for it. */
    private static final double PERFORMER = 7;

    private static final double KIND = 8;
    private static final double AIRCRAFT = 4;
    private static final double TRANSIT = 3;
    /** What sort of aircraft it is, is told in this first part of an act, or everybody has seen it. */
    private static final double EARLY = 0.35;
    /** What is seen as it is told is wanted so much more. */
    private static final double SEEN = 1.5;
    /** Within so much of the most, it is that to the eye. */
    private static final double NEARLY = 0.97;
    /** Each further line of one sort is wanted so much less. */
    private static final double FURTHER = 0.85;

    /** What these facts count is counted in no other way by the crowd, so nobody is told to. */
    private static final String COUNTING =
            " ?(Count them with me\\.|Count them: that is a long time to keep straight\\.)";

    private static final Set<CrowdFact.Kind> DULL =
            EnumSet.of(CrowdFact.Kind.FARTHEST, CrowdFact.Kind.SOUND, CrowdFact.Kind.DISTANCE_FLOWN);
    private static final Map<CrowdFact.Kind, Set<String>> RESTS_ON = Map.of(
            CrowdFact.Kind.POWER, Set.of("powerKw", "massKg"),
            CrowdFact.Kind.MASS, Set.of("massKg"),
            CrowdFact.Kind.SPAN, Set.of("spanM"),
            CrowdFact.Kind.PROPELLER, Set.of("propellerRpm"),
            CrowdFact.Kind.TIP_SPEED, Set.of("propellerRpm", "propellerDiameterM"));

    private final List<Line> lines = new ArrayList<>();
    private final List<Scene> scenes;
    private final @Nullable Aircraft craft;
    private final boolean smoke;

    private Material(List<Scene> scenes, @Nullable Aircraft craft, boolean smoke) {
        this.smoke = smoke;
        this.scenes = scenes;
        this.craft = craft;
    }

    static List<Line> of(Show show, Act act, Flight flight, List<Scene> scenes, Names names) {
        Material made = new Material(
                scenes,
                show.aircraft(act.airframe()).orElse(null),
                scenes.stream().anyMatch(Scene::hasSmoke));
        made.figures();
        made.beside(show, act, flight, names);
        made.numbers(show, flight);
        return made.lines;
    }

    private void figures() {
        for (int i = 0; i < scenes.size(); i++) {
            Scene scene = scenes.get(i);
            CatalogueEntry entry = scene.entry();
            String look = scene.figure().look();
            if (scene.figure().transit() && look != null && i > 0) {
                add(i, Role.WHAT, "transit " + look, look, TRANSIT);
            }
            if (entry == null || scene.isGuess() || scene.isRighting()) {
                continue;
            }
            Told told = new Told(entry, craft, smoke);
            if (scene.isRest()) {
                if (!scene.figure().transit() && scene.before() == 0) {
                    add(i, Role.LOOK, entry.name() + " look", told.look(), TRANSIT);
                }
                continue;
            }
            double interest = scene.interest();
            if (scene.before() == 0) {
                add(i, Role.LOOK, entry.name() + " look", told.look(), interest);
                add(
                        i,
                        Role.WHAT,
                        entry.name() + " what",
                        told.what(Called.count(scene.figure()) == 1),
                        interest * WHAT);
            }
            add(i, Role.BEHIND, entry.name() + " why", told.why(), interest * WHY);
            add(i, Role.BEHIND, entry.name() + " feels", told.feels(), interest * FEELS);
            add(i, Role.HANDS, entry.name() + " hands", told.hands(), interest * HANDS);
        }
    }

    /** Who flies and what is flown, at the beginning and where nothing else is shown. */
    private void beside(Show show, Act act, Flight flight, Names names) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < scenes.size(); i++) {
            if (i == 0 || scenes.get(i).isRest()) {
                places.add(i);
            }
        }
        List<String> facts = names.facts(show, act);
        Optional<String> kind = craft == null ? Optional.empty() : Names.kind(craft);
        for (int place : places) {
            double value = PERFORMER;
            for (String fact : facts) {
                add(place, Role.BESIDE, fact, fact, value);
                value *= FURTHER;
            }
            if (scenes.get(place).flown().startS() <= EARLY * flight.totalS()) {
                kind.ifPresent(words -> add(place, Role.BESIDE, "kind", words, place == 0 ? KIND : AIRCRAFT));
            }
        }
    }

    private void numbers(Show show, Flight flight) {
        if (!(craft instanceof Airframe airframe) || flight.figures().stream().noneMatch(f -> f.simulated())) {
            return;
        }
        FlownPath path = new FlownPath(flight.samples());
        for (CrowdFact fact : CrowdFacts.of(show, airframe, flight).facts()) {
            if (isAssumed(fact, airframe) || DULL.contains(fact.kind())) {
                continue;
            }
            String text = told(fact);
            for (int i = 0; i < scenes.size(); i++) {
                Scene scene = scenes.get(i);
                if (scene.figure().id().equals(fact.figureId()) && !scene.isRest() && !scene.isGuess()) {
                    FigureFlight flown = scene.flown();
                    TrueWhile when = TrueWhile.of(fact, path.between(flown.startS(), flown.endS()), flown.startS());
                    double value = scene.interest() * fact.telling() / BEST_TELLING;
                    lines.add(new Line(i, Role.NUMBER, fact.kind().name(), text, value, when));
                } else if (fact.figureId() == null && scene.isRest()) {
                    double value = AIRCRAFT * fact.telling() / BEST_TELLING;
                    add(i, Role.BESIDE, fact.kind().name(), text, value * (isSeenIn(scene, fact, flight) ? SEEN : 1));
                }
            }
        }
    }

    /** Whether the act is as high, or as fast, as it ever is on this way between two figures. */
    private static boolean isSeenIn(Scene scene, CrowdFact fact, Flight flight) {
        return switch (fact.kind()) {
            case HIGHEST -> isMost(scene, flight, FigureFlight::highestM);
            case FASTEST -> isMost(scene, flight, FigureFlight::greatestMps);
            default -> false;
        };
    }

    private static boolean isMost(Scene scene, Flight flight, ToDoubleFunction<FigureFlight> of) {
        double most = flight.figures().stream().mapToDouble(of).max().orElse(0);
        return of.applyAsDouble(scene.flown()) >= NEARLY * most;
    }

    /** The call says how many turns there are, so the fact goes on from there. */
    private static String told(CrowdFact fact) {
        String text = fact.text().replaceAll(COUNTING, "");
        List<String> parts = Sentences.of(text);
        return fact.kind() == CrowdFact.Kind.SPIN_TURNS && parts.size() > 1 ? parts.get(1) : text;
    }

    private static boolean isAssumed(CrowdFact fact, Airframe airframe) {
        Set<String> assumed = airframe.assumed();
        return RESTS_ON.getOrDefault(fact.kind(), Set.of()).stream().anyMatch(assumed::contains);
    }

    private void add(int scene, Role role, String sort, String text, double value) {
        if (!text.isBlank()) {
            lines.add(new Line(scene, role, sort, text, value));
        }
    }
}

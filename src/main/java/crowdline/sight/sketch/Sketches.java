package crowdline.sight.sketch;

import crowdline.sight.picture.Flown;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Drawings of figures for which nothing is computed, after what the catalogue says of them. How far and how fast is by eye:
 * they show what happens, and nothing is to be measured in them.
 */
public final class Sketches {
    /** By the figure's name in the catalogue. */
    private static final Map<String, Supplier<Flown>> ALL = Map.ofEntries(
            Map.entry("take-off", Ways::takeOff),
            Map.entry("landing", Ways::landing),
            Map.entry("climb", Ways::climb),
            Map.entry("level out", Ways::levelOut),
            Map.entry("run-in", Ways::runIn),
            Map.entry("tow", Together::tow),
            Map.entry("join-up", Together::joinUp),
            Map.entry("break", Together::breaking),
            Map.entry("bomb burst", Together::bombBurst),
            Map.entry("heart", Together::heart),
            Map.entry("tail chase", Together::tailChase),
            Map.entry("falling leaf", Ways::fallingLeaf),
            Map.entry("changing shape", Together::changingShape),
            Map.entry("synchro split", Together::synchroSplit),
            Map.entry("hover", Slow::hover),
            Map.entry("bow", Slow::bow),
            Map.entry("pedal turn", Slow::pedalTurn),
            Map.entry("backwards flight", Slow::backwards),
            Map.entry("sideways flight", Slow::sideways),
            Map.entry("quick stop", Slow::quickStop),
            Map.entry("spiral climb", Slow::spiralClimb),
            Map.entry("nose-in circle", Slow::noseInCircle),
            Map.entry("helicopter autorotation", Slow::autorotation),
            Map.entry("helicopter turn-back", Slow::turnBack),
            Map.entry("jump", Slow::jump),
            Map.entry("freefall", Slow::freefall),
            Map.entry("canopy descent", Slow::canopyDescent),
            Map.entry("streamer drop", Slow::streamer),
            Map.entry("canopy stack", Slow::canopyStack),
            Map.entry("downplane", Slow::downplane),
            Map.entry("canopy landing", Slow::canopyLanding));

    private Sketches() {}

    /** The figures that are drawn here. */
    public static Set<String> names() {
        return ALL.keySet();
    }

    /** A figure by its name in the catalogue; empty if it is not drawn here. */
    public static Optional<Flown> of(String figure) {
        return Optional.ofNullable(ALL.get(figure)).map(Supplier::get);
    }

    /** A computed flight with those about it that the figure has besides the leader. */
    public static Flown inCompany(String figure, Flown leader) {
        return leader.isEmpty() ? leader : Together.with(figure, leader);
    }
}

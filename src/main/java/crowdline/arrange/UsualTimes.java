package crowdline.arrange;

import crowdline.show.figure.Figure;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How long figures last that are only timed, where nobody told it. Common practice, no source. */
final class UsualTimes {
    /** Of anything else, seconds. */
    private static final double OTHER_S = 20;
    /** Where all of an act is told, no figure of it is assumed to be shorter or longer, seconds. Judgement. */
    private static final double SHORTEST_S = 5;

    private static final double LONGEST_S = 300;
    /** Seconds, by the figure's name; with the way to it where a formation flies it. */
    private static final Map<String, Double> SECONDS = Map.ofEntries(
            Map.entry("take-off", 25.0),
            Map.entry("landing", 60.0),
            Map.entry("tow", 60.0),
            Map.entry("run-in", 15.0),
            Map.entry("join-up", 40.0),
            Map.entry("formation pass", 40.0),
            Map.entry("formation loop", 45.0),
            Map.entry("formation roll", 40.0),
            Map.entry("opposition pass", 45.0),
            Map.entry("mirror pass", 45.0),
            Map.entry("heart", 30.0),
            Map.entry("tail chase", 60.0),
            Map.entry("falling leaf", 20.0),
            Map.entry("helicopter autorotation", 25.0),
            Map.entry("changing shape", 30.0),
            Map.entry("steep turn", 40.0),
            Map.entry("bow", 10.0),
            Map.entry("pedal turn", 15.0),
            Map.entry("quick stop", 15.0),
            Map.entry("spiral climb", 30.0),
            Map.entry("nose-in circle", 30.0),
            Map.entry("jump", 10.0),
            Map.entry("freefall", 40.0),
            Map.entry("canopy descent", 150.0),
            Map.entry("streamer drop", 60.0),
            Map.entry("canopy stack", 60.0),
            Map.entry("downplane", 20.0),
            Map.entry("canopy landing", 60.0));

    private UsualTimes() {}

    /**
     * How long each figure of an act lasts, seconds: as it was told, or as usual.
     *
     * @param allS how long all of them take, seconds, which those share whose time nobody told, each as its usual time is to
     *     theirs, whole seconds; null if nobody said
     */
    static List<Double> of(List<Figure> figures, @Nullable Double allS) {
        double toldS = figures.stream()
                .map(Figure::durationS)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sum();
        double usualS = figures.stream()
                .filter(f -> f.durationS() == null)
                .mapToDouble(UsualTimes::usual)
                .sum();
        double by = allS == null || allS <= toldS || usualS == 0 ? 1 : (allS - toldS) / usualS;
        return figures.stream()
                .map(f -> Objects.requireNonNullElseGet(
                        f.durationS(), () -> Math.min(LONGEST_S, Math.max(SHORTEST_S, Math.rint(by * usual(f))))))
                .toList();
    }

    private static double usual(Figure figure) {
        return SECONDS.getOrDefault(figure.figure(), OTHER_S);
    }
}

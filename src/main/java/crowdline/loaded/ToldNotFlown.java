package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.ActOrigins.What;
import crowdline.show.Act;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What a pilot told of the figures of an act, and is not in the act as it is flown here: a number, or a part of a figure. */
final class ToldNotFlown {
    static final String NUMBER = "told-not-kept";
    static final String PART = "written-not-drawn";

    private ToldNotFlown() {}

    /** @param path where a figure stands in the show */
    static List<Finding> of(Act act, Flight flight, Function<String, String> path) {
        List<Finding> found = new ArrayList<>();
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElse(null);
            Asked asked = figure == null ? null : figure.asked();
            if (figure == null || asked == null) {
                continue;
            }
            for (NotKept not : NotKept.of(figure, flight)) {
                found.add(new Finding(
                        Severity.WARNING,
                        NUMBER,
                        "%s was told %s and %s %s, so ask the pilot which is right"
                                .formatted(flown.name(), not.toldWords(), doing(not.what()), not.flownWords()),
                        path.apply(figure.id())));
            }
            List<String> undrawn = Undrawn.of(asked, flown);
            if (!undrawn.isEmpty()) {
                found.add(new Finding(
                        Severity.WARNING,
                        PART,
                        "%s is drawn without %s, which the pilot wrote: put it into its shape, or ask the pilot"
                                .formatted(flown.name(), Undrawn.quoted(undrawn)),
                        path.apply(figure.id())));
            }
        }
        return found;
    }

    private static String doing(What what) {
        return what == What.TIME ? "takes" : "begins at";
    }
}

package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.ActOrigins.What;
import crowdline.show.Act;
import crowdline.show.catalogue.Catalogue;
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
    static final String TIMED = "not-drawn-for-this";

    private ToldNotFlown() {}

    /** @param path where a figure stands in the show */
    static List<Finding> of(Act act, Flight flight, Catalogue catalogue, Function<String, String> path) {
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
            if (isOnlyTimed(figure, asked, flown, catalogue)) {
                found.add(new Finding(
                        Severity.WARNING,
                        TIMED,
                        flown.name()
                                + " cannot be drawn for what flies this act, so only its time is known: ask whether it"
                                + " is flown",
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

    /** Whether the layout would have drawn it, and found no way in which this aircraft flies it. */
    private static boolean isOnlyTimed(Figure figure, Asked asked, FigureFlight flown, Catalogue catalogue) {
        return !flown.simulated()
                && figure.durationS() != null
                && asked.seconds() == null
                && catalogue
                        .find(figure.figure())
                        .filter(entry -> !entry.elements().isEmpty())
                        .isPresent();
    }

    private static String doing(What what) {
        return what == What.TIME ? "takes" : "begins at";
    }
}

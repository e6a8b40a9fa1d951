package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Every figure is known by name, and its length can be told. */
final class FigureRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int a = 0; a < show.acts().size(); a++) {
            List<Figure> figures = show.acts().get(a).figures();
            if (figures.isEmpty()) {
                findings.accept(new Finding(
                        Severity.ERROR,
                        "no-figures",
                        "the act " + Written.quoted(show.acts().get(a).id()) + " has no figure; it needs at least one",
                        At.act(a) + ".figures"));
            }
            for (int f = 0; f < figures.size(); f++) {
                check(figures.get(f), At.figure(a, f), catalogue, isTimed(show, a), findings);
            }
        }
    }

    /** Then a rule of its own asks for lengths, whatever the catalogue has. */
    private static boolean isTimed(Show show, int a) {
        return show.aircraft(show.acts().get(a).airframe())
                .filter(TimedAircraft.class::isInstance)
                .isPresent();
    }

    private static void check(
            Figure figure, String path, Catalogue catalogue, boolean timed, Consumer<Finding> findings) {
        Optional<CatalogueEntry> entry = catalogue.find(figure.figure());
        if (entry.isEmpty() && figure.asked() != null && figure.durationS() != null) {
            return;
        }
        if (entry.isEmpty()) {
            String near = Nearest.hint(figure.figure(), catalogue.names());
            String remedy = near.isEmpty() ? "; name one that is, or add it to the show's own figures" : near;
            findings.accept(new Finding(
                    Severity.ERROR,
                    "unknown-figure",
                    "the figure " + Written.quoted(figure.figure()) + " is not in the catalogue" + remedy,
                    path + ".figure"));
            return;
        }
        List<Element> elements = figure.elements() == null ? entry.orElseThrow().elements() : figure.elements();
        if (!timed && elements.isEmpty() && figure.durationS() == null) {
            findings.accept(new Finding(
                    Severity.ERROR,
                    "figure-without-length",
                    "the figure " + Written.quoted(figure.id())
                            + " has neither elements to predict it from nor a durationS; give it one of them",
                    path));
        }
        Double durationS = figure.durationS();
        for (int q = 0; q < figure.quiets().size() && durationS != null; q++) {
            if (figure.quiets().get(q).fromS() >= durationS) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "quiet-too-late",
                        "the quiet begins " + figure.quiets().get(q).fromS() + " s into a figure of " + durationS
                                + " s; begin it earlier or take it out",
                        path + ".quiets[" + q + "].fromS"));
            }
        }
    }
}

package crowdline.app.window;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** What the screen must say of an act, from the show file and the prediction alone. */
final class ActOnPaper {
    final Show show;
    final Act act;
    final Flight flight;

    private ActOnPaper(Show show, Act act, Variant variant) {
        this.show = show;
        this.act = act;
        flight = new Predictor(show, CatalogueFile.shipped(), act, variant).predict();
    }

    static List<ActOnPaper> of(Path file) throws ShowFileException {
        Show show = Objects.requireNonNull(new ShowFile().read(file).show());
        List<ActOnPaper> acts = new ArrayList<>();
        for (Act act : show.acts()) {
            acts.add(new ActOnPaper(show, act, act.variants().get(0)));
        }
        return acts;
    }

    /** The same act flown without a figure. */
    ActOnPaper without(String figureId) {
        Variant full = act.variants().get(0);
        List<String> order =
                full.order().stream().filter(id -> !id.equals(figureId)).toList();
        return new ActOnPaper(show, act, new Variant("without", null, order));
    }

    int size() {
        return flight.figures().size();
    }

    int indexOf(String figureId) {
        return flight.figures().stream().map(FigureFlight::figureId).toList().indexOf(figureId);
    }

    String id(int index) {
        return flight.figures().get(index).figureId();
    }

    String name(int index) {
        return flight.figures().get(index).name();
    }

    double startS(int index) {
        return flight.figures().get(index).startS();
    }

    double lastsS(int index) {
        return flight.figures().get(index).durationS();
    }

    private Figure figure(int index) {
        return act.figure(flight.figures().get(index).figureId()).orElseThrow();
    }

    Optional<Remark> call(int index) {
        return figure(index).remarks().stream()
                .filter(r -> r.kind() == RemarkKind.CALL)
                .findFirst();
    }

    List<Quiet> quiets(int index) {
        return figure(index).quiets();
    }

    /** The words of every remark of a kind that may be said while a figure is flown: its own, the next one's, the act's. */
    List<String> texts(int index, RemarkKind kind) {
        List<Remark> all = new ArrayList<>(figure(index).remarks());
        if (index + 1 < size()) {
            all.addAll(figure(index + 1).remarks());
        }
        all.addAll(act.remarks());
        all.addAll(show.remarks());
        return all.stream().filter(r -> r.kind() == kind).map(Remark::text).toList();
    }

    /** How long is left, as the screen has it: tenths below ten seconds, minutes from one minute on. */
    static String left(double seconds) {
        return seconds < 10 ? String.format(Locale.ROOT, "%.1f s", seconds) : whole(seconds);
    }

    static String whole(double seconds) {
        long s = Math.round(seconds);
        return s < 60 ? s + " s" : String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60);
    }

    static String late(double seconds) {
        return Math.abs(seconds) < 3 ? "On time" : whole(Math.abs(seconds)) + (seconds > 0 ? " late" : " early");
    }
}

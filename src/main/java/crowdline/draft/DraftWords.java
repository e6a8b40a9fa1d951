package crowdline.draft;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.moment.FigureMoments;
import crowdline.measure.Must;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a first draft of what is said in an act: for each figure a call, and for the most interesting of them what to look
 * for, what it is, what is behind it and a number that can be pictured; first of all who flies what, and last a goodbye. Every
 * remark is marked as a draft. What the show says already stays, and no sentence of it is said again.
 */
public final class DraftWords {
    /** How much of an act is talk, unless somebody wants it otherwise: people come to look. A choice without a source. */
    public static final double SHARE = 0.5;

    private final Pace pace;
    private final double share;

    /**
     * A writer for one speaker.
     *
     * @param share how much of the act is talk at most, 0 to 1
     */
    public DraftWords(Pace pace, double share) {
        this.pace = pace;
        Must.beWithin("share of talk", share, 0, 1);
        this.share = share;
    }

    /**
     * The act with remarks in every figure that has none yet.
     *
     * @param flight the act as predicted, with its samples
     * @param catalogue with the show's own entries
     */
    public Act of(Show show, Act act, Flight flight, Catalogue catalogue) {
        List<Scene> scenes = scenes(act, flight, catalogue);
        if (scenes.isEmpty()) {
            return act;
        }
        Writing writing = new Writing(show, act, scenes, pace, share * (flight.totalS() + Writing.AHEAD_S));
        Map<String, List<Remark>> written = writing.write(flight);
        List<Remark> ofAct = new ArrayList<>(act.remarks());
        ofAct.addAll(writing.floating());
        Act drafted = act.withFigures(
                act.figures().stream()
                        .map(f -> f.remarks().isEmpty() ? f.withRemarks(written.getOrDefault(f.id(), List.of())) : f)
                        .toList(),
                ofAct);
        return new Rehearsal(show, drafted, scenes, pace).kept();
    }

    private static boolean isInverted(Flight flight, double atS) {
        return flight.samples().stream()
                .filter(s -> s.tS() >= atS)
                .findFirst()
                .filter(s -> s.up().z() < 0)
                .isPresent();
    }

    private static List<Scene> scenes(Act act, Flight flight, Catalogue catalogue) {
        List<Scene> scenes = new ArrayList<>();
        Map<String, Integer> times = new HashMap<>();
        Map<String, Integer> called = new HashMap<>();
        boolean back = false;
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElse(null);
            if (figure == null || flown.durationS() <= 0) {
                continue;
            }
            CatalogueEntry entry = catalogue.find(figure.figure()).orElse(null);
            String name = entry == null ? figure.shownName() : entry.name();
            FigureMoments seen = FigureMoments.of(flown, flight.samples());
            scenes.add(new Scene(
                    figure,
                    flown,
                    entry,
                    seen,
                    times.merge(name, 1, Integer::sum) - 1,
                    called.merge(Called.noun(figure, entry), 1, Integer::sum) - 1,
                    back,
                    false,
                    isInverted(flight, flown.startS())));
            back = scenes.get(scenes.size() - 1).isRest()
                    && figure.shownName().matches("(?i).*(back|again|reposition).*");
        }
        for (int i = scenes.size() - 1; i >= 0; i--) {
            Scene scene = scenes.get(i);
            if (!scene.isRest()) {
                scenes.set(i, scene.asLast());
                break;
            }
        }
        return scenes;
    }
}

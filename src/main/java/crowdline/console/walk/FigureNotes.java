package crowdline.console.walk;

import crowdline.show.FigureNote;
import java.util.List;
import java.util.stream.Stream;

/** The notes of a show, one for a figure at most. */
final class FigureNotes {
    private final Notes notes;

    FigureNotes(Notes notes) {
        this.notes = notes;
    }

    /** The note on a figure; empty if there is none. */
    String text(String actId, String figureId) {
        return notes.all().stream()
                .filter(n -> n.about(actId, figureId))
                .findFirst()
                .map(FigureNote::text)
                .orElse("");
    }

    /** Writes a note in place of the one there; an empty one takes it away, a long one is cut. */
    void write(String actId, String figureId, String text) {
        String plain = text.strip();
        Stream<FigureNote> others = notes.all().stream().filter(n -> !n.about(actId, figureId));
        Stream<FigureNote> own = plain.isEmpty()
                ? Stream.of()
                : Stream.of(new FigureNote(
                        actId, figureId, plain.substring(0, Math.min(plain.length(), FigureNote.LONGEST))));
        notes.keep(Stream.concat(others, own).toList());
    }

    /** Figures of an act that have a note. */
    List<String> figuresOf(String actId) {
        return notes.all().stream()
                .filter(n -> n.actId().equals(actId))
                .map(FigureNote::figureId)
                .toList();
    }
}

package crowdline.app.command;

import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.speech.plain.ActReading;
import crowdline.speech.plain.Readability;
import crowdline.speech.plain.RemarkHints;
import crowdline.speech.plain.SpeechFinding;
import crowdline.speech.say.Spoken;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What listeners might not follow in a show's remarks.
 *
 * @param hints in the order of the show
 * @param reads how the show's own remarks and each act read
 */
record RemarksCheck(List<Hint> hints, List<Reads> reads) {

    /** One finding; public so that it can be printed as JSON. */
    public record Hint(
            @Nullable String act,
            @Nullable String figure,
            String remark,
            String code,
            String message,
            int from,
            int to,
            @Nullable String plainWords) {}

    /** How one block reads; without scores under 100 words. */
    public record Reads(
            @Nullable String act,
            int sentences,
            int words,
            @Nullable Double readingEase,
            @Nullable Double grade,
            @Nullable String band) {}

    static RemarksCheck of(Show show) {
        Catalogue known = CatalogueFile.shipped().with(show.figures());
        RemarkHints words =
                new RemarkHints(RemarkHints.tradeWords(known.entries()), figure -> RemarkHints.namesOf(figure, known));
        ActReading reading = new ActReading(new Spoken(show.sayAs())::expand);
        List<Hint> hints = new ArrayList<>();
        Set<Optional<String>> acts = new LinkedHashSet<>();
        List<Reads> reads = new ArrayList<>();
        for (RemarkPlace place : RemarkPlace.all(show)) {
            for (Remark remark : place.in(show)) {
                words.of(show, place, remark, remark.text()).forEach(f -> hints.add(hint(place, remark, f)));
            }
            if (acts.add(Optional.ofNullable(place.actId()))) {
                reading.of(show, place.actId()).ifPresent(r -> reads.add(reads(place, r)));
            }
        }
        return new RemarksCheck(hints, reads);
    }

    private static Hint hint(RemarkPlace place, Remark remark, SpeechFinding f) {
        return new Hint(
                place.actId(),
                place.figureId(),
                remark.id(),
                f.code(),
                f.message(),
                f.fromChar(),
                f.toChar(),
                f.suggestion());
    }

    private static Reads reads(RemarkPlace place, Readability r) {
        boolean enough = r.isMeaningful();
        return new Reads(
                place.actId(),
                r.sentences(),
                r.words(),
                enough ? r.readingEase() : null,
                enough ? r.gradeLevel() : null,
                enough ? r.band() : null);
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Hint hint : hints) {
            String where = Objects.requireNonNullElse(hint.act(), "show")
                    + (hint.figure() == null ? "" : "/" + hint.figure()) + "/" + hint.remark();
            lines.add("hint " + where + ": " + hint.message()
                    + (hint.plainWords() == null ? "" : " Plain words: " + hint.plainWords() + "."));
        }
        for (Reads block : reads) {
            if (block.band() != null && block.readingEase() != null) {
                lines.add("reads " + Objects.requireNonNullElse(block.act(), "show") + ": " + block.band() + " (ease "
                        + Math.round(block.readingEase()) + ", " + block.words() + " words)");
            }
        }
        return lines;
    }
}

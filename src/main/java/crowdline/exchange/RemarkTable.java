package crowdline.exchange;

import crowdline.edit.Change;
import crowdline.edit.act.Edit;
import crowdline.sheet.CsvCell;
import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The remarks of a show as rows of cells, given to a spreadsheet and taken back. */
public final class RemarkTable {
    private static final String HEAD =
            "act,figure,figure id,kind,words,short words,at,until,earliest s,latest s,weight,once,speaker,"
                    + "language,other words,other short words,other speaker,other older,id";

    private RemarkTable() {}

    /**
     * What was understood, for a person to look at before it is taken.
     *
     * @param rows every row below the heads
     */
    public record Reading(List<RemarkRow> rows) {
        public Reading {
            rows = List.copyOf(rows);
        }

        public long taken() {
            return rows.stream().filter(row -> row.remark() != null).count();
        }
    }

    /**
     * Reads cells under heads, of which one must be the words.
     *
     * @param name of the file, or what to call it
     * @throws ShowFileException if it is no table, or none of remarks
     */
    public static Reading read(Path name, String text, Show show) throws ShowFileException {
        return new Reading(new RemarkRows(show).read(name, Cells.of(name, text)));
    }

    /** The remarks of the rows that are taken, as one change: those the show has are changed where they stand. */
    public static Edit take(Reading reading) {
        Edit edit = show -> {
            Show now = show;
            int number = 0;
            for (RemarkRow row : reading.rows()) {
                Remark remark = row.remark();
                if (remark != null) {
                    now = row.place().with(now, with(row.place().in(now), remark));
                    number++;
                }
            }
            if (number == 0) {
                throw Text.noneTaken();
            }
            return Change.of("Take " + (number == 1 ? "1 remark" : number + " remarks") + " from cells", now);
        };
        return edit.refusing();
    }

    private static List<Remark> with(List<Remark> remarks, Remark taken) {
        List<Remark> all = new ArrayList<>(remarks);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(taken.id())) {
                all.set(i, taken);
                return all;
            }
        }
        all.add(taken);
        return all;
    }

    /** Whether the cells have a column of words under a head, so that remarks are meant. */
    public static boolean isOne(Path name, String text) throws ShowFileException {
        return RemarkRows.heads(Cells.of(name, text)).isPresent();
    }

    /** Every remark with something else between the cells, such as tabs to be pasted. */
    public static String of(Show show, char separator) {
        return Cells.separatedBy(separator, of(show));
    }

    /** Every remark as comma-separated values that a spreadsheet opens and {@link #read} takes. */
    public static String of(Show show) {
        StringBuilder text = new StringBuilder(HEAD).append("\r\n");
        for (RemarkPlace place : RemarkPlace.all(show)) {
            place.in(show).forEach(remark -> text.append(row(show, place, remark)));
        }
        return text.toString();
    }

    private static String row(Show show, RemarkPlace place, Remark remark) {
        Act act = place.actId() == null ? null : show.act(place.actId()).orElse(null);
        Figure figure = act == null || place.figureId() == null
                ? null
                : act.figure(place.figureId()).orElse(null);
        Translation other = remark.translation();
        return Stream.of(
                                CsvCell.quoted(act == null ? "" : act.title()),
                                CsvCell.quoted(figure == null ? "" : figure.shownName()),
                                CsvCell.quoted(figure == null ? "" : figure.id()),
                                remark.kind().name().toLowerCase(Locale.ROOT),
                                CsvCell.quoted(remark.text()),
                                CsvCell.quoted(Objects.requireNonNullElse(remark.shortText(), "")),
                                CsvCell.quoted(words(remark.at())),
                                CsvCell.quoted(words(remark.until())),
                                seconds(remark.earliestS()),
                                seconds(remark.latestS()),
                                RunningOrder.number(remark.weight()),
                                remark.once() ? "yes" : "",
                                CsvCell.quoted(Objects.requireNonNullElse(remark.speaker(), "")),
                                other == null ? "" : CsvCell.quoted(other.language()),
                                other == null ? "" : CsvCell.quoted(other.text()),
                                other == null ? "" : CsvCell.quoted(Objects.requireNonNullElse(other.shortText(), "")),
                                other == null ? "" : CsvCell.quoted(Objects.requireNonNullElse(other.speaker(), "")),
                                other == null || !other.older() ? "" : "yes",
                                CsvCell.quoted(remark.id()))
                        .reduce((a, b) -> a + ',' + b)
                        .orElseThrow()
                + "\r\n";
    }

    private static String words(@Nullable MomentName moment) {
        return moment == null ? "" : moment.words();
    }

    private static String seconds(@Nullable Double value) {
        return value == null ? "" : RunningOrder.number(value);
    }
}

package crowdline.app.command;

import crowdline.loaded.ActPlans;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Margins;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.sheet.Columns;
import crowdline.sheet.RunningSheet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** What is planned to be said in an act, as lines a person can read. */
final class PlanTable {
    private static final int NOTE_IN = 16;
    /** With a longer head there is too little room for words behind it. */
    private static final int HEAD_MOST = 60;

    private PlanTable() {}

    static List<String> lines(ShowLookup words, ActPlans.Planned planned) {
        Map<String, Remark> remarks = words.show().remarksById();
        Margins margins = planned.margins();
        List<String> lines = new ArrayList<>();
        lines.addAll(Columns.wrapped(planned.act().title(), Columns.MOST));
        lines.add(String.format(
                Locale.UK,
                "Variant \"%s\". Talk %s, silence %s.",
                planned.variant().name(),
                RunningSheet.minutes(planned.plan().talkS()),
                RunningSheet.minutes(planned.plan().quietS())));
        lines.add("");
        List<Placed> all = planned.plan().placed();
        String row = "%6s  %6s"
                + column(all.stream().map(p -> kind(p, words)).toList(), "kind")
                + column(all.stream().map(PlanTable::figure).toList(), "figure")
                + column(all.stream().map(Placed::remarkId).toList(), "remark") + "  ";
        lines.addAll(row(String.format(row, "starts", "lasts", "kind", "figure", "remark"), "what is said"));
        for (Placed placed : planned.plan().placed()) {
            Remark remark = Objects.requireNonNull(remarks.get(placed.remarkId()));
            String head = String.format(
                    row,
                    (placed.startS() < 0 ? "-" : "") + RunningSheet.minutes(Math.abs(placed.startS())),
                    String.format(Locale.UK, "%.1f s", placed.endS() - placed.startS()),
                    kind(placed, words),
                    figure(placed),
                    placed.remarkId());
            String said = remark.words(placed.form() == RemarkForm.SHORT);
            lines.addAll(row(head, said));
            margins.whyShort(placed).ifPresent(why -> lines.addAll(note(why)));
            if (placed.tight()) {
                lines.addAll(note("just fits: it runs over if the figure is a short one"));
            }
        }
        if (!planned.plan().unplaced().isEmpty()) {
            lines.add("");
            lines.add("Not placed:");
        }
        for (Unplaced unplaced : planned.plan().unplaced()) {
            Remark remark = Objects.requireNonNull(remarks.get(unplaced.remarkId()));
            lines.addAll(Columns.hanging(
                    "  " + remark.kind().name().toLowerCase(Locale.ROOT) + " " + unplaced.remarkId() + ": ",
                    4,
                    unplaced.reason() + (margins.fitsOnAGoodDay(unplaced) ? "; it would fit on a good day" : "")));
        }
        lines.add("");
        return lines;
    }

    private static String kind(Placed placed, ShowLookup words) {
        Remark remark = words.remark(placed.remarkId()).orElseThrow();
        return placed.kind().name().toLowerCase(Locale.ROOT)
                + (remark.draft() ? ", draft" : "")
                + words.other(remark).map(name -> ", " + name).orElse("");
    }

    private static String figure(Placed placed) {
        String figure = placed.figureId();
        return figure == null ? "any" : figure;
    }

    private static String column(List<String> cells, String head) {
        int widest = cells.stream().mapToInt(String::length).max().orElse(0);
        return "  %-" + Math.max(widest, head.length()) + "s";
    }

    private static List<String> note(String words) {
        return Columns.hanging(" ".repeat(NOTE_IN), words);
    }

    /** What is said stands behind the head, or under it where the names in the head leave no room. */
    private static List<String> row(String head, String said) {
        if (head.length() <= HEAD_MOST) {
            return Columns.hanging(head, said);
        }
        List<String> lines = new ArrayList<>();
        lines.add(head.stripTrailing());
        lines.addAll(note(said));
        return lines;
    }
}

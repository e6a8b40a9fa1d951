package crowdline.app.window.edit;

import crowdline.console.words.PlannedRemark;
import crowdline.console.words.PlannedRemark.Standing;
import crowdline.loaded.ActPlans;
import crowdline.patter.Margins;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.sheet.RunningSheet;
import crowdline.show.figure.RemarkForm;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the plan makes of each remark, in a word and a sentence. */
public final class RemarkStandings {
    private RemarkStandings() {}

    /** By the id of the remark; a remark that any act says is not called homeless because another act does not. */
    public static Map<String, PlannedRemark> of(List<ActPlans.Planned> plans) {
        Map<String, PlannedRemark> words = new HashMap<>();
        for (ActPlans.Planned planned : plans) {
            Margins margins = planned.margins();
            for (Unplaced unplaced : planned.plan().unplaced()) {
                String why = "The plan has no place for it: " + unplaced.reason()
                        + (margins.fitsOnAGoodDay(unplaced) ? "; it would fit on a good day." : ".");
                words.putIfAbsent(unplaced.remarkId(), new PlannedRemark(standing(unplaced), why));
            }
        }
        for (ActPlans.Planned planned : plans) {
            Margins margins = planned.margins();
            planned.plan()
                    .placed()
                    .forEach(placed ->
                            words.put(placed.remarkId(), new PlannedRemark(standing(placed), placed(placed, margins))));
        }
        return words;
    }

    private static Standing standing(Unplaced unplaced) {
        return switch (unplaced.why()) {
            case FIGURE_NOT_AHEAD -> Standing.UNKNOWN;
            case NO_GAP -> Standing.NOT_NEEDED;
            case PASSED_OVER, TOO_LATE, TOO_LONG, QUIET, CROWDED_OUT -> Standing.NO_PLACE;
        };
    }

    private static Standing standing(Placed placed) {
        return placed.form() == RemarkForm.SHORT ? Standing.SHORT : placed.tight() ? Standing.TIGHT : Standing.SAID;
    }

    private static String placed(Placed placed, Margins margins) {
        String early = RunningSheet.minutes(Math.abs(placed.startS()));
        String at = (placed.startS() < 0 && !early.equals(RunningSheet.minutes(0)) ? "−" : "") + early;
        return "The plan says it at " + at
                + (placed.form() == RemarkForm.SHORT ? " in its short form" : "")
                + margins.whyShort(placed).map(why -> ": " + why).orElse("")
                + (placed.tight() ? "; it just fits, and runs over if the figure is a short one." : ".");
    }
}

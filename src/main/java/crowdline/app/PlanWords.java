package crowdline.app;

import crowdline.patter.Form;
import crowdline.patter.Margins;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.sheet.RunningSheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the plan has each remark, in a sentence. */
final class PlanWords {
    private PlanWords() {}

    /** By the id of the remark; a remark that any act says is not called homeless because another act does not. */
    static Map<String, String> of(List<ActPlans.Planned> plans) {
        Map<String, String> words = new HashMap<>();
        for (ActPlans.Planned planned : plans) {
            Margins margins = planned.margins();
            for (Unplaced unplaced : planned.plan().unplaced()) {
                words.putIfAbsent(
                        unplaced.remarkId(),
                        "The plan has no place for it: " + unplaced.reason()
                                + (margins.fitsOnAGoodDay(unplaced) ? "; it would fit on a good day." : "."));
            }
        }
        for (ActPlans.Planned planned : plans) {
            Margins margins = planned.margins();
            planned.plan().placed().forEach(placed -> words.put(placed.remarkId(), placed(placed, margins)));
        }
        return words;
    }

    private static String placed(Placed placed, Margins margins) {
        String at = (placed.startS() < 0 ? "−" : "") + RunningSheet.minutes(Math.abs(placed.startS()));
        return "The plan says it at " + at
                + (placed.form() == Form.SHORT ? " in its short form" : "")
                + margins.whyShort(placed).map(why -> ": " + why).orElse("")
                + (placed.tight() ? "; it fits only on a good day and runs over if the figure is a short one." : ".");
    }
}

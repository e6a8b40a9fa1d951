package crowdline.console.prepare.glance;

import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import java.util.OptionalDouble;

/** Reads a cloud base as it is typed. */
public final class CloudBase {
    public static final String HOW = "Type the cloud base above the display datum, such as 1,500 ft";

    private CloudBase() {}

    /** What to say beside a base as it is typed: what it means for an act, or how one is typed; a space for nothing typed. */
    public static String said(ActView act, String typed) {
        if (typed.isBlank()) {
            return " ";
        }
        OptionalDouble baseFt = read(typed);
        return baseFt.isPresent() ? meaning(act, baseFt.getAsDouble()) : HOW;
    }

    /** What a base means for an act: the variant that fits it, and whether Live begins with another. */
    public static String meaning(ActView act, double baseFt) {
        String live = "Live begins with \"" + act.inLive() + "\"";
        return act.under(baseFt)
                .map(VariantView::name)
                .map(name -> name.equals(act.inLive())
                        ? "\"" + name + "\" fits, and Live begins with it"
                        : "\"" + name + "\" fits. " + live + ": press V there")
                .orElse("No variant fits: ask the pilot. " + live);
    }

    /** Feet, as in a text such as "1,500" or "1500 ft"; empty if that is no height. */
    public static OptionalDouble read(String text) {
        OptionalDouble feet = Measures.read(text, Dimension.HEIGHT);
        return feet.isPresent() && feet.getAsDouble() >= 0 ? feet : OptionalDouble.empty();
    }
}

package crowdline.show.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The cloud groups of a METAR (WMO-No. 306, FM 15, regulation 15.9) as they come, and the base they make. */
final class MetarCloud {
    private static final Pattern FORM = Pattern.compile(
            "(?<amount>FEW|SCT|BKN|OVC|///)(?<height>\\d{3}|///)(CB|TCU|///)?|(?<sky>VV)(?<up>\\d{3}|///)");
    private static final Pattern MEANT = Pattern.compile("(FEW|SCT|BKN|OVC|VV)[^A-Z].*|(FEW|SCT|BKN|OVC|VV)");
    private static final Pattern UNSEEN = Pattern.compile("/{6}(CB|TCU|///)?|///\\d{3}(CB|TCU|///)?");

    private final List<String> notes = new ArrayList<>();
    private final List<String> thin = new ArrayList<>();
    private boolean told;
    private @Nullable Double baseFt;

    /** Takes a group if it is one of cloud. */
    boolean take(String group) {
        switch (group) {
            case "CAVOK" -> {
                notes.add("CAVOK: no cloud below 5,000 ft; no cloud base is kept");
                told = true;
            }
            case "NSC", "NCD", "SKC", "CLR" -> {
                notes.add(group + ": no cloud that counts as a base");
                told = true;
            }
            default -> {
                if (!MEANT.matcher(group).matches() && !UNSEEN.matcher(group).matches()) {
                    return false;
                }
                layer(group);
            }
        }
        return true;
    }

    private void layer(String group) {
        Matcher m = FORM.matcher(group);
        if (!m.matches()) {
            throw new IllegalArgumentException(
                    group + " is not a cloud group; it must be FEW, SCT, BKN, OVC or VV and three digits"
                            + " of hundreds of feet, such as BKN020");
        }
        boolean obscured = m.group("sky") != null;
        String height = obscured ? m.group("up") : m.group("height");
        String amount = obscured ? "VV" : m.group("amount");
        if (amount.equals("FEW") || amount.equals("SCT")) {
            thin.add(group);
            told = true;
        } else if (height.equals("///") || amount.equals("///")) {
            notes.add("The amount or height of cloud is missing in " + group);
        } else {
            double feet = 100 * Double.parseDouble(height);
            Double before = baseFt;
            baseFt = before == null ? feet : Math.min(before, feet);
            told = true;
            if (obscured) {
                notes.add(group + ": the sky is obscured; the vertical visibility counts as the cloud base");
            }
        }
    }

    /** The lowest that covers more than half the sky, feet above the aerodrome; null if there is none. */
    @Nullable
    Double baseFt() {
        return baseFt;
    }

    /** False if nothing was said of cloud, or only that it is missing. */
    boolean told() {
        return told;
    }

    List<String> notes() {
        List<String> all = new ArrayList<>(notes);
        if (!thin.isEmpty()) {
            all.add(String.join(", ", thin) + ": half the sky or less, which does not count as a base");
        }
        if (baseFt != null) {
            all.add("The cloud base is above the aerodrome that reports; it is taken as above the datum");
        }
        return all;
    }
}

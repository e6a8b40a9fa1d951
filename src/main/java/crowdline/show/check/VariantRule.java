package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Each variant flies figures of its act, each once, and the cloud base says which variant it is. */
final class VariantRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            List<String> ids = act.figures().stream().map(Figure::id).toList();
            for (int v = 0; v < act.variants().size(); v++) {
                order(act.variants().get(v), ids, At.variant(a, v), findings);
            }
            cloudBases(act, a, findings);
            unused(act, a, findings);
        }
    }

    private static void order(Variant variant, List<String> ids, String path, Consumer<Finding> findings) {
        if (variant.order().isEmpty()) {
            findings.accept(new Finding(
                    Severity.ERROR,
                    "empty-variant",
                    "the variant " + Written.quoted(variant.name()) + " flies nothing; list the figures it flies",
                    path + ".order"));
        }
        Set<String> seen = new HashSet<>();
        for (int o = 0; o < variant.order().size(); o++) {
            String id = variant.order().get(o);
            String here = path + ".order[" + o + "]";
            if (!ids.contains(id)) {
                String near = Nearest.hint(id, ids);
                String remedy = near.isEmpty() ? "; name the id of one of its figures" : near;
                findings.accept(new Finding(
                        Severity.ERROR,
                        "unknown-figure-id",
                        "the figure id " + Written.quoted(id) + " is not in this act" + remedy,
                        here));
            } else if (!seen.add(id)) {
                findings.accept(new Finding(
                        Severity.ERROR,
                        "figure-twice",
                        "the variant " + Written.quoted(variant.name()) + " flies " + Written.quoted(id)
                                + " twice; give the second time a figure with an id of its own",
                        here));
            }
        }
    }

    private static void cloudBases(Act act, int a, Consumer<Finding> findings) {
        if (act.variants().size() < 2) {
            return;
        }
        Map<Double, String> nameOf = new HashMap<>();
        Double above = null;
        for (int v = 0; v < act.variants().size(); v++) {
            Variant variant = act.variants().get(v);
            Double baseFt = variant.minCloudBaseFt();
            if (baseFt == null) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "variant-without-cloud-base",
                        "the variant " + Written.quoted(variant.name())
                                + " has no minCloudBaseFt, so the cloud base cannot choose between it and the others",
                        At.variant(a, v)));
                continue;
            }
            String path = At.variant(a, v) + ".minCloudBaseFt";
            String same = nameOf.putIfAbsent(baseFt, variant.name());
            if (same != null) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "variants-alike",
                        "the variants " + Written.quoted(same) + " and " + Written.quoted(variant.name())
                                + " have the same minCloudBaseFt, " + baseFt
                                + ", so the cloud base cannot choose between them",
                        path));
            } else if (above != null && baseFt > above) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "variants-out-of-order",
                        "the variant " + Written.quoted(variant.name()) + " needs a higher cloud base, " + baseFt
                                + ", than the one before it, " + above + "; put the highest first",
                        path));
            }
            above = baseFt;
        }
    }

    private static void unused(Act act, int a, Consumer<Finding> findings) {
        Set<String> used = new HashSet<>();
        act.variants().forEach(variant -> used.addAll(variant.order()));
        for (int f = 0; f < act.figures().size(); f++) {
            String id = act.figures().get(f).id();
            if (!used.contains(id)) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "unused-figure",
                        "no variant flies the figure " + Written.quoted(id),
                        At.figure(a, f)));
            }
        }
    }
}

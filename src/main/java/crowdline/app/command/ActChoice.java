package crowdline.app.command;

import crowdline.app.shell.Terminal;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Nearest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which acts of a show a command is about, and which variant of each: {@code --act} and {@code --variant}. */
final class ActChoice {
    @Option(names = "--act", paramLabel = "ID", description = "Only this act.")
    private @Nullable String actId;

    @Option(names = "--variant", paramLabel = "NAME", description = "Use this variant, not each act's first.")
    private @Nullable String variantName;

    /** The acts chosen; empty, with a complaint, if the show has no such act or none of them such a variant. */
    Optional<List<Act>> of(Show show, Terminal terminal) {
        return chosen(show, terminal).filter(acts -> knowsVariant(acts, terminal));
    }

    /** Whether an act was named. */
    boolean named() {
        return actId != null;
    }

    /** The variant chosen; an act without it flies its first. */
    Variant variant(Act act) {
        return named(act).orElse(act.variants().get(0));
    }

    private Optional<List<Act>> chosen(Show show, Terminal terminal) {
        String wanted = actId;
        if (wanted == null) {
            return Optional.of(show.acts());
        }
        Act act = show.act(wanted).orElse(null);
        if (act == null) {
            List<String> ids = show.acts().stream().map(Act::id).toList();
            terminal.complain("there is no act " + wanted + " in this show; it has " + String.join(", ", ids)
                    + Nearest.hint(wanted, ids));
            return Optional.empty();
        }
        return Optional.of(List.of(act));
    }

    private Optional<Variant> named(Act act) {
        return Optional.ofNullable(variantName).flatMap(act::variant);
    }

    private boolean knowsVariant(List<Act> acts, Terminal terminal) {
        String wanted = variantName;
        if (wanted == null || acts.stream().anyMatch(act -> named(act).isPresent())) {
            return true;
        }
        List<String> names = acts.stream()
                .flatMap(act -> act.variants().stream())
                .map(Variant::name)
                .distinct()
                .toList();
        String who = acts.size() == 1
                ? "act " + acts.get(0).id() + " has no variant " + wanted + "; it has "
                : "no act has a variant " + wanted + "; there are ";
        terminal.complain(who + String.join(", ", names) + Nearest.hint(wanted, names));
        return false;
    }
}

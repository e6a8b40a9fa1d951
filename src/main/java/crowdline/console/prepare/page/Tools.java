package crowdline.console.prepare.page;

import crowdline.console.keys.Command;
import crowdline.console.passes.PassesHost;
import crowdline.measure.Measures;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.Action;

/**
 * What the pages of the Prepare place work with.
 *
 * @param editor makes edits of the show
 * @param host asked for what takes time, and for kinds and figures
 * @param passes asked when somebody decides about a pass
 * @param changed told when what can be done here may have changed
 * @param actions what each command does, for menus
 * @param measures told what speeds and heights are to be read in
 */
public record Tools(
        Editor editor,
        Supplier<PrepareHost> host,
        Supplier<PassesHost> passes,
        Runnable changed,
        Function<Command, Action> actions,
        Consumer<Measures> measures) {}

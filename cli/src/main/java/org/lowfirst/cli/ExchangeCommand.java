package org.lowfirst.cli;

import java.util.concurrent.Callable;
import org.lowfirst.app.exchange.AdvisingFromAFile;
import org.lowfirst.app.exchange.ExchangeDone;
import org.lowfirst.app.exchange.ExchangeJson;
import org.lowfirst.app.exchange.ExchangeSheet;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst exchange FILE}. */
@Command(
        name = "exchange",
        description =
                "Advises which supply or pair to send back, what each choice returns unused, costs and leaves in fills, and"
                        + " when waiting is cheaper.",
        footer = {
            "",
            "Exit codes: 0 waiting is cheaper; 3 it is time to order; 2 the file or the command line is wrong; 1 anything"
                    + " else.",
            "examples/exchange.yaml shows an exchange file."
        })
final class ExchangeCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Exchange file in YAML; - reads what is piped in.")
    private String file = "";

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    ExchangeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        AdvisingFromAFile advising = new AdvisingFromAFile(Oxygen.schmidtWagner());
        return new AnsweringAFile(terminal)
                .answer(
                        file,
                        "nothing was worked out",
                        found -> advising.advise(found.name(), found.bytes()),
                        this::print);
    }

    private int print(ExchangeDone done) {
        terminal.out().print(json ? ExchangeJson.of(done) : ExchangeSheet.of(done));
        return done.orderIsDue() ? ExitCode.ORDER_IS_DUE : ExitCode.DONE;
    }
}

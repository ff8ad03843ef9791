package org.lowfirst.app.exchange;

import java.util.Optional;
import org.lowfirst.app.exchange.ExchangeFileReader.ExchangeFile;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile;
import org.lowfirst.app.plan.ObjectionPlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.exchange.AdvisingExchange;
import org.lowfirst.planning.exchange.ExchangeAdvice;
import org.lowfirst.planning.exchange.ExchangeOutcome;

/** Advises on exchanging supplies of the bank that a file tells. */
public final class AdvisingFromAFile {

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public AdvisingFromAFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads a file and advises.
     *
     * @param name how problems name the file
     * @param bytes its content
     */
    public Asked<ExchangeDone> advise(String name, byte[] bytes) {
        Problems problems = new Problems();
        QuestionFile opened = QuestionFile.open(name, bytes, ExchangeFileReader.SHAPE, problems);
        Optional<ExchangeFile> file =
                opened.section().flatMap(section -> new ExchangeFileReader(gas, problems).read(section));
        if (file.isEmpty()) {
            return opened.refused(problems);
        }
        ExchangeOutcome outcome = AdvisingExchange.advise(file.get().request());
        if (outcome instanceof ExchangeAdvice advice) {
            return opened.answered(new ExchangeDone(file.get().bank(), advice), problems);
        }
        new ObjectionPlaces(file.get().noted(), problems)
                .report(
                        ((ExchangeOutcome.Refused) outcome).why(),
                        file.get().bank().units());
        return opened.refused(problems);
    }
}

package stridetally.cli;

import java.io.PrintWriter;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import stridetally.Exempt;
import stridetally.Exempt.Fence;
import stridetally.cli.files.ClosedPipe;
import stridetally.cli.options.CommonOptions;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/** The one place where a failure becomes a sentence and an exit code. A stack trace appears only with {@code --debug}. */
@Exempt(
        from = Fence.GENERAL_EXCEPTION,
        reason = "The one handler: whatever was not foreseen ends here as exit code 70.")
final class ErrorHandler implements IExecutionExceptionHandler, IParameterExceptionHandler {
    private final PrintWriter err;
    private final CommonOptions common;

    ErrorHandler(PrintWriter err, CommonOptions common) {
        this.err = err;
        this.common = common;
    }

    /** Runs, and also answers for what picocli lets through: output that fails under the help, and errors of the JVM. */
    int guard(IntSupplier run) {
        try {
            return run.getAsInt();
        } catch (Throwable failure) {
            return explain(failure);
        }
    }

    @Override
    public int handleParseException(ParameterException wrongUsage, String[] arguments) {
        err.println("stridetally: " + wrongUsage.getMessage());
        UnmatchedArgumentException.printSuggestions(wrongUsage, err);
        err.println("Try '" + wrongUsage.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
        return ExitCodes.USAGE;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        return explain(
                failure instanceof ExecutionException && failure.getCause() != null ? failure.getCause() : failure);
    }

    private int explain(Throwable failure) {
        if (failure instanceof ClosedPipe) {
            return ExitCodes.DONE;
        }
        if (failure instanceof InputRefused) {
            return say(String.valueOf(failure.getMessage()), failure, ExitCodes.INPUT_REFUSED);
        }
        if (failure instanceof OutputRefused) {
            return say(String.valueOf(failure.getMessage()), failure, ExitCodes.MACHINE_REFUSED);
        }
        if (failure instanceof OutOfMemoryError) {
            return say(
                    "there is not enough memory for this run; give it more with STRIDETALLY_JAVA_OPTIONS=-Xmx4g",
                    failure,
                    ExitCodes.MACHINE_REFUSED);
        }
        // The message of an unforeseen failure may hold a cell of the input, so it is shown only on request.
        return say(
                "this is a defect of ours, not a mistake of yours; run it again with --debug for the details that mend it",
                failure,
                ExitCodes.DEFECT);
    }

    private int say(String sentence, Throwable failure, int exitCode) {
        err.println("stridetally: " + sentence);
        if (common.debug()) {
            failure.printStackTrace(err);
        }
        return exitCode;
    }
}

// Gives the shell's environment to the program, which otherwise sees an invented environment.
Module['preRun'] = () => Object.assign(ENV, process.env);

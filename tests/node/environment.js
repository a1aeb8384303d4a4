// Hands the shell's environment to the program, which otherwise sees an invented one.
Module['preRun'] = () => Object.assign(ENV, process.env);

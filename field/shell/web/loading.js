// What stands in the page before the program runs, in two languages: that it loads and how far, or
// what failed and what mends it. Written so that engines too old for the program still read it.
(function () {
  var words = {
    loading: ['Hemline is loading …', 'Hemline se está cargando …'],
    so_far: ['Hemline is loading: {1} of {2} KB.', 'Hemline se está cargando: {1} de {2} KB.'],
    slow: ['Hemline is loading: {1} of {2} KB. Nothing came for a while: look whether there is a signal.',
      'Hemline se está cargando: {1} de {2} KB. Hace rato que no llega nada: mire si hay señal.'],
    missing: ['A file of the program is missing on its host, or is there only in part: {1}. Load the page again in some minutes. If it stays so, tell whoever put the page there.',
      'Falta un archivo del programa en su servidor, o está solo en parte: {1}. Vuelva a cargar la página en unos minutos. Si sigue así, avise a quien puso la página.'],
    cut: ['The connection was cut while Hemline was loading: {1}. Get a signal, then load the page again.',
      'Se cortó la conexión mientras se cargaba Hemline: {1}. Busque señal y vuelva a cargar la página.'],
    blocked: ['This browser keeps nothing here ({1}). Leave private browsing, or allow this page to store data, then load it again.',
      'Este navegador no guarda nada aquí ({1}). Salga de la navegación privada, o permita que esta página guarde datos, y vuelva a cargarla.'],
    plain_http: ['This page came over plain http, where a browser keeps nothing safely: Hemline does not start here. Open {1} instead, or ask whoever put the page there for an https address.',
      'Esta página llegó por http sin cifrar, donde el navegador no guarda nada con seguridad: Hemline no arranca aquí. Abra {1}, o pida una dirección https a quien puso la página.'],
    old: ['This browser is too old for Hemline ({1}). It takes Safari 15.4 (iPadOS 15.4), Chrome or Edge 86, Firefox 96, or later. Update it, or open the page on another tablet.',
      'Este navegador es demasiado antiguo para Hemline ({1}). Hace falta Safari 15.4 (iPadOS 15.4), Chrome o Edge 86, Firefox 96, o posterior. Actualícelo, o abra la página en otra tableta.'],
    no_webgl: ['This browser cannot draw here: it has no WebGL 2. Update the browser, or allow it to use the graphics chip, then load the page again.',
      'Este navegador no puede dibujar aquí: no tiene WebGL 2. Actualice el navegador, o permítale usar el procesador gráfico, y vuelva a cargar la página.'],
    other_tab: ['Hemline is open in another tab. Use it there; or close it there, and it goes on here by itself.',
      'Hemline está abierto en otra pestaña. Úselo allí; o ciérrelo allí, y seguirá aquí por sí solo.'],
    stopped: ['Hemline stopped ({1}). What was saved is safe. Load the page again.',
      'Hemline se detuvo ({1}). Lo guardado está a salvo. Vuelva a cargar la página.'],
    one_copy: ['Only one copy of what is saved is kept on this tablet from now on: the second one cannot be written. Back up to a file today.',
      'Desde ahora solo hay una copia de lo guardado en esta tableta: la segunda no se puede escribir. Respalde hoy en un archivo.'],
    came_back: ['The browser had lost its store. The jobs came back from the second copy. Back up to a file today.',
      'El navegador había perdido su almacén. Los trabajos volvieron de la segunda copia. Respalde hoy en un archivo.'],
    mended: ['One of the two copies on this tablet was behind, and was mended from the other. Nothing that was saved is missing.',
      'Una de las dos copias de esta tableta estaba atrasada y se arregló con la otra. No falta nada de lo guardado.'],
    not_saved: ['Something that was keyed in before is not saved. Look at the last entries of the job.',
      'Algo que se introdujo antes no está guardado. Mire las últimas anotaciones del trabajo.'],
    tilt_refused: ['The tilt sensor was refused. Measure the pitch with a level and the tape; or allow motion for this page in the browser, and load it again.',
      'Se rechazó el sensor de inclinación. Mida la pendiente con nivel y cinta; o permita el movimiento a esta página en el navegador, y vuelva a cargarla.'],
    offline: ['Works without a signal now.', 'Ya funciona sin señal.'],
    again: ['Load again', 'Volver a cargar'],
    understood: ['Understood', 'Entendido']
  };
  var said = document.getElementById('said');
  var button = document.getElementById('again');
  var language = navigator.language || 'en';
  try {
    language = localStorage.getItem('language') || language;
  } catch (problem) {
    // storage is blocked: that is said where it matters
  }
  var started = false, failed = false, hiding = 0;

  function tr(key, values) {
    var text = words[key][/^es/.test(document.documentElement.lang) ? 1 : 0];
    for (var i = 0; i < values.length; ++i) {
      text = text.replace('{' + (i + 1) + '}', values[i]);
    }
    return text;
  }

  function show(text, press, act) {
    clearTimeout(hiding);
    said.textContent = text;
    button.hidden = !press;
    if (press) {
      button.textContent = tr(press, []);
      button.onclick = act;
    }
  }

  var loading = window.loading = {
    /// Says what goes on; nothing hides it but the next words.
    say: function (key) {
      if (!failed) {
        show(tr(key, [].slice.call(arguments, 1)));
      }
    },
    /// Says what failed, with its mend: the first failure stays.
    fail: function (key) {
      if (!failed) {
        failed = true;
        show(tr(key, [].slice.call(arguments, 1)), 'again', function () { location.reload(); });
      }
    },
    /// The same in the program's own words.
    fail_in_words: function (text) {
      failed = true;
      show(text, 'again', function () { location.reload(); });
    },
    /// Says what befell, until it is put away.
    tell: function (key) {
      show(tr(key, []), 'understood', function () { show(''); });
    },
    /// Says it for some seconds.
    pass: function (key) {
      if (said.textContent === '') {
        show(tr(key, []));
        hiding = setTimeout(function () { show(''); }, 6000);
      }
    },
    started: function () {
      started = true;
      document.documentElement.className = 'started';
      if (button.hidden) {
        show('');
      }
    },
    language: function (code) {
      if (document.documentElement.lang !== code) {
        document.documentElement.lang = code;
        try {
          localStorage.setItem('language', code);
        } catch (problem) {
          // the words before the program then follow the browser
        }
      }
    },
    has_failed: function () { return failed; }
  };

  document.documentElement.lang = /^es/.test(language) ? 'es' : 'en';
  loading.say('loading');
  window.addEventListener('error', function (event) {
    if (event.message) {
      loading.fail('stopped', event.message);
    }
  });
  window.addEventListener('unhandledrejection', function (event) {
    loading.fail('stopped', (event.reason && event.reason.message) || String(event.reason));
  });

  /// A browser does not say which of the scripts that belong together did not come.
  function name_missing(names, guess) {
    if (names.length === 0) {
      loading.fail('missing', guess);
      return;
    }
    fetch(names[0]).then(function (answer) {
      if (answer.ok) {
        name_missing(names.slice(1), guess);
      } else {
        loading.fail('missing', names[0]);
      }
    }, function () { loading.fail('cut', names[0]); });
  }

  function draws() {
    try {
      return Boolean(document.createElement('canvas').getContext('webgl2'));
    } catch (problem) {
      return false;
    }
  }
  var lacking = !('noModule' in document.createElement('script')) ? 'modules'
    : typeof WebAssembly !== 'object' ? 'WebAssembly'
      : !window.indexedDB ? 'IndexedDB'
        : !String.prototype.replaceAll ? 'replaceAll'
          : window.isSecureContext && !navigator.locks ? 'Web Locks' : '';
  if (lacking) {
    loading.fail('old', lacking);
  } else if (!window.isSecureContext) {
    loading.fail('plain_http', 'https://' + location.host + location.pathname);
  } else if (!draws()) {
    loading.fail('no_webgl');
  } else {
    var script = document.createElement('script');
    script.type = 'module';
    script.src = 'page.js';
    script.onerror = function () { name_missing(SCRIPTS, 'page.js'); };
    document.head.appendChild(script);
  }
}());

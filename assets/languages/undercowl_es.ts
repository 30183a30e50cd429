<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>AfterwardsPage</name>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>It is done</source>
        <translation>Está hecho</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Nothing that is on again waits to be adjusted, bled or tried.</source>
        <translation>Nada de lo que está montado espera ajuste, purga o prueba.</translation>
    </message>
    <message>
        <source>Nothing open</source>
        <translation>Nada pendiente</translation>
    </message>
    <message>
        <source>Why, if it is left out</source>
        <translation>Por qué, si se deja</translation>
    </message>
    <message>
        <source>goes home on a trailer</source>
        <translation>va a casa en remolque</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
</context>
<context>
    <name>ApprovalPage</name>
    <message>
        <source>The owner&apos;s word</source>
        <translation>La palabra del dueño</translation>
    </message>
    <message>
        <source>The owner agrees</source>
        <translation>El dueño acepta</translation>
    </message>
    <message>
        <source>The owner does not want it</source>
        <translation>El dueño no lo quiere</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Aprobación</translation>
    </message>
    <message>
        <source>For which work</source>
        <translation>Para qué trabajo</translation>
    </message>
    <message>
        <source>front brake, both tyres</source>
        <translation>freno delantero, los dos neumáticos</translation>
    </message>
    <message>
        <source>Up to which sum</source>
        <translation>Hasta qué importe</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
</context>
<context>
    <name>AsFoundPage</name>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Otra foto</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Go on with the views</source>
        <translation>Seguir con las vistas</translation>
    </message>
    <message>
        <source>Pass over</source>
        <translation>Pasar</translation>
    </message>
    <message>
        <source>Every view is photographed or passed over.</source>
        <translation>Cada vista está fotografiada o pasada.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Escribiendo</translation>
    </message>
    <message>
        <source>Reading it again</source>
        <translation>Releyendo</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Copiar ahora</translation>
    </message>
    <message>
        <source>Back up, sealed</source>
        <translation>Copiar, sellado</translation>
    </message>
    <message>
        <source>Last copy of the entries on this device: %1. It does not help when the phone is lost: put the whole shop into another place now and then.</source>
        <translation>Última copia de las entradas en este dispositivo: %1. No ayuda si se pierde el teléfono: guardar de vez en cuando todo el taller en otro sitio.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Photos and memos</source>
        <translation>Fotos y notas</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Only new ones</source>
        <translation>Solo las nuevas</translation>
    </message>
    <message>
        <source>The backups that are there already are needed too when the shop is brought back.</source>
        <translation>Para recuperar el taller hacen falta también las copias que ya están ahí.</translation>
    </message>
    <message>
        <source>Without one, whoever finds the file can read it. A forgotten one cannot be got round.</source>
        <translation>Sin ella, quien encuentre el archivo puede leerlo. Si se olvida, no hay remedio.</translation>
    </message>
    <message>
        <source>Passphrase, if it is to be sealed</source>
        <translation>Frase secreta, si se sella</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Otra vez la misma</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Recuperar un taller</translation>
    </message>
</context>
<context>
    <name>BagEntry</name>
    <message>
        <source>in use: %1</source>
        <translation>en uso: %1</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Número de la bolsa</translation>
    </message>
</context>
<context>
    <name>BandPlot</name>
    <message>
        <source>%1; limits %2 to %3</source>
        <translation>%1; límites %2 a %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>CalcEntry</name>
    <message>
        <source>changes the sign</source>
        <translation>cambia el signo</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia la unidad</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
</context>
<context>
    <name>CalcInputRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>from the job; tap to change</source>
        <translation>de la orden; tocar para cambiar</translation>
    </message>
    <message>
        <source>assumed; tap to change</source>
        <translation>supuesto; tocar para cambiar</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>puede quedar vacío</translation>
    </message>
</context>
<context>
    <name>CalcListPage</name>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Palabras que buscar</translation>
    </message>
    <message>
        <source>words, such as torque or tyre</source>
        <translation>palabras como par o neumático</translation>
    </message>
    <message>
        <source>No calculation has these words. Try fewer, or only their beginnings.</source>
        <translation>Ningún cálculo tiene esas palabras. Probar con menos, o solo el principio.</translation>
    </message>
</context>
<context>
    <name>CalcMore</name>
    <message>
        <source>Hide: %1</source>
        <translation>Ocultar: %1</translation>
    </message>
</context>
<context>
    <name>CalcPage</name>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Guardar en la orden</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vaciar</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Ejemplo</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Formula, limits and sources</source>
        <translation>Fórmula, límites y fuentes</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>The photo before is still being saved. Say it again.</source>
        <translation>La foto anterior aún se guarda. Repetirlo.</translation>
    </message>
    <message>
        <source>Take a photo first; then a memo to it can be kept.</source>
        <translation>Primero hacer una foto; luego se le puede guardar una nota.</translation>
    </message>
</context>
<context>
    <name>CameraPicture</name>
    <message>
        <source>Picture of the camera</source>
        <translation>Imagen de la cámara</translation>
    </message>
    <message>
        <source>%1x</source>
        <translation>%1x</translation>
    </message>
</context>
<context>
    <name>CameraShutter</name>
    <message>
        <source>Torch off</source>
        <translation>Apagar luz</translation>
    </message>
    <message>
        <source>Torch on</source>
        <translation>Encender luz</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Disparar</translation>
    </message>
    <message>
        <source>Zoom %1x</source>
        <translation>Zoom %1x</translation>
    </message>
</context>
<context>
    <name>CaptureFooter</name>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a esta foto</translation>
    </message>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Listo, %n guardada</numerusform>
            <numerusform>Listo, %n guardadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>CarryPage</name>
    <message>
        <source>Carry over</source>
        <translation>Trasladar</translation>
    </message>
    <message numerus="yes">
        <source>Take %n over</source>
        <comment>wires</comment>
        <translation>
            <numerusform>Trasladar %n cable</numerusform>
            <numerusform>Trasladar %n cables</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken over</source>
        <translation>Trasladados</translation>
    </message>
    <message>
        <source>Wires go where the same is served; their colour decides nothing. Say what each wire of the old part and each place of the new one serves.</source>
        <translation>Los cables van donde la función es la misma; su color no decide nada. Decir la función de cada cable de la pieza vieja y de cada vía de la nueva.</translation>
    </message>
    <message>
        <source>Measure first</source>
        <translation>Primero medir</translation>
    </message>
    <message numerus="yes">
        <source>%n at most</source>
        <comment>trials</comment>
        <translation>
            <numerusform>%n como máximo</numerusform>
            <numerusform>%n como máximo</numerusform>
        </translation>
    </message>
    <message>
        <source>Then try</source>
        <translation>Luego probar</translation>
    </message>
    <message>
        <source>Only with a fuse of 3 A at most in the trial lead, one connection at a time, everything else switched off, engine stopped. No sign: take it off before the next. A fuse that blows ends the trials. The machine&apos;s manual and diagram come first.</source>
        <translation>Solo con un fusible de 3 A como máximo en el cable de prueba, una conexión cada vez, todo lo demás apagado, motor parado. Sin señal: quitarla antes de la siguiente. Un fusible que salta acaba las pruebas. El manual y el esquema del vehículo van primero.</translation>
    </message>
    <message>
        <source>At which place was the sign seen?</source>
        <translation>¿En qué vía se vio la señal?</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>Caution: %1</source>
        <translation>Cuidado: %1</translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message>
        <source>Answered: %1</source>
        <translation>Respondido: %1</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Todos</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>falta %n</numerusform>
            <numerusform>faltan %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Leyendo los cables</translation>
    </message>
    <message>
        <source>Photo as it is now</source>
        <translation>Foto como está ahora</translation>
    </message>
    <message>
        <source>Wires as they are now</source>
        <translation>Cables como están ahora</translation>
    </message>
    <message>
        <source>When the stroke began at the last place</source>
        <translation>Si el trazo empezó en la última vía</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Dar la vuelta</translation>
    </message>
    <message>
        <source>Stroke again</source>
        <translation>Otro trazo</translation>
    </message>
    <message>
        <source>Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.</source>
        <translation>En una foto no se distinguen cables iguales: un cambio entre gemelos no se ve.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ahora tocar el último cable.</translation>
    </message>
    <message>
        <source>Stroke across the wires from place 1 on, or tap the first wire and then the last.</source>
        <translation>Pasar el dedo por los cables desde la vía 1, o tocar el primer cable y luego el último.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Photo before</source>
        <translation>Foto de antes</translation>
    </message>
    <message>
        <source>Compare with another photo</source>
        <translation>Comparar con otra foto</translation>
    </message>
</context>
<context>
    <name>ConsumablesPage</name>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidos y grasa</translation>
    </message>
    <message>
        <source>Use it all the same</source>
        <translation>Usarlo igual</translation>
    </message>
    <message>
        <source>It goes in</source>
        <translation>Se pone</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Qué se pone</translation>
    </message>
    <message>
        <source>brake fluid</source>
        <translation>líquido de frenos</translation>
    </message>
    <message>
        <source>Grade on the container</source>
        <translation>Tipo en el envase</translation>
    </message>
    <message>
        <source>Grades that the machine allows</source>
        <translation>Tipos que admite el vehículo</translation>
    </message>
    <message>
        <source>DOT 4, from the lid</source>
        <translation>DOT 4, en la tapa</translation>
    </message>
    <message>
        <source>Day on which the container was opened</source>
        <translation>Día en que se abrió el envase</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Went in</source>
        <translation>Puesto</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1: fits</source>
        <translation>%1: vale</translation>
    </message>
    <message>
        <source>%1: fits after a change (%2)</source>
        <translation>%1: vale tras un cambio (%2)</translation>
    </message>
    <message>
        <source>%1: does not fit (%2)</source>
        <translation>%1: no vale (%2)</translation>
    </message>
    <message>
        <source>line %1: a quote is opened and not closed</source>
        <translation>línea %1: unas comillas se abren y no se cierran</translation>
    </message>
    <message>
        <source>line %1: letters stand between a closing quote and the end of its cell</source>
        <translation>línea %1: hay letras entre las comillas finales y el fin de la celda</translation>
    </message>
    <message>
        <source>make, model: one of them must be there</source>
        <translation>make, model: hace falta uno de los dos</translation>
    </message>
    <message>
        <source>year: &apos;%1&apos; is no year such as 1987</source>
        <translation>year: &apos;%1&apos; no es un año como 1987</translation>
    </message>
    <message>
        <source>passed over: is here as job %1</source>
        <translation>pasada: ya está como orden %1</translation>
    </message>
    <message>
        <source>opens job %1: %2</source>
        <translation>abre la orden %1: %2</translation>
    </message>
    <message>
        <source>part: must say what part it is</source>
        <translation>part: debe decir qué recambio es</translation>
    </message>
    <message>
        <source>price: &apos;%1&apos; is no number such as 18.50</source>
        <translation>price: &apos;%1&apos; no es un número como 18.50</translation>
    </message>
    <message>
        <source>currency: a price needs its currency, such as EUR</source>
        <translation>currency: un precio necesita su moneda, por ejemplo EUR</translation>
    </message>
    <message>
        <source>job: there is no job &apos;%1&apos; in this shop</source>
        <translation>job: en este taller no hay orden &apos;%1&apos;</translation>
    </message>
    <message>
        <source>passed over: job %1 has it</source>
        <translation>pasada: la orden %1 ya lo tiene</translation>
    </message>
    <message>
        <source>adds to job %1: %2</source>
        <translation>añade a la orden %1: %2</translation>
    </message>
    <message>
        <source>odometer: %1</source>
        <translation>cuentakilómetros: %1</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not known</source>
        <translation>%1: &apos;%2&apos; no se conoce</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>the first line names no column that is known: a sheet of machines has &quot;make&quot; and &quot;model&quot;, one of parts has &quot;job&quot; and &quot;part&quot;</source>
        <translation>la primera línea no nombra columnas conocidas: una hoja de vehículos tiene &quot;make&quot; y &quot;model&quot;, una de recambios &quot;job&quot; y &quot;part&quot;</translation>
    </message>
    <message>
        <source>media file %1: its content does not fit its name</source>
        <translation>archivo %1: su contenido no casa con su nombre</translation>
    </message>
    <message>
        <source>backup: %1 exists already; give another name</source>
        <translation>copia: %1 ya existe; dar otro nombre</translation>
    </message>
    <message>
        <source>backup: what was written is not what can be read again</source>
        <translation>copia: lo escrito no se relee igual</translation>
    </message>
    <message>
        <source>%1. Make room on the disk, then try again.</source>
        <translation>%1. Hacer sitio en el disco y probar otra vez.</translation>
    </message>
    <message>
        <source>%1. Check who owns the folder and whether it may be written.</source>
        <translation>%1. Mirar de quién es la carpeta y si se puede escribir en ella.</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>no se puede escribir %1</translation>
    </message>
    <message>
        <source>cannot sync %1</source>
        <translation>no se puede sincronizar %1</translation>
    </message>
    <message>
        <source>cannot close %1</source>
        <translation>no se puede cerrar %1</translation>
    </message>
    <message>
        <source>cannot make the folder %1</source>
        <translation>no se puede crear la carpeta %1</translation>
    </message>
    <message>
        <source>cannot create %1</source>
        <translation>no se puede crear %1</translation>
    </message>
    <message>
        <source>cannot rename to %1</source>
        <translation>no se puede renombrar a %1</translation>
    </message>
    <message>
        <source>cannot remove %1</source>
        <translation>no se puede quitar %1</translation>
    </message>
    <message>
        <source>cannot open the folder %1</source>
        <translation>no se puede abrir la carpeta %1</translation>
    </message>
    <message>
        <source>cannot look at %1</source>
        <translation>no se puede mirar %1</translation>
    </message>
    <message>
        <source>cannot list the folder %1</source>
        <translation>no se puede listar la carpeta %1</translation>
    </message>
    <message>
        <source>cannot open %1</source>
        <translation>no se puede abrir %1</translation>
    </message>
    <message>
        <source>cannot read %1</source>
        <translation>no se puede leer %1</translation>
    </message>
    <message>
        <source>%1 is not a regular file. Move it away.</source>
        <translation>%1 no es un archivo normal. Apartarlo.</translation>
    </message>
    <message>
        <source>Make room on the disk, then try again; nothing of this was kept.</source>
        <translation>Hacer sitio en el disco y probar otra vez; de esto no se guardó nada.</translation>
    </message>
    <message>
        <source>Check that the folder may be written and that no other program holds it locked.</source>
        <translation>Mirar que se pueda escribir en la carpeta y que ningún otro programa la tenga bloqueada.</translation>
    </message>
    <message>
        <source>Try again; if it comes back, check the disk.</source>
        <translation>Probar otra vez; si vuelve, revisar el disco.</translation>
    </message>
    <message>
        <source>%1 is the database of another program. It was left as it is; name another folder.</source>
        <translation>%1 es la base de datos de otro programa. Quedó como estaba; nombrar otra carpeta.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version (schema %2, known here: up to %3). It was left as it is; update this program.</source>
        <translation>%1 lo escribió una versión más nueva (esquema %2, aquí se conoce: hasta %3). Quedó como estaba; actualizar este programa.</translation>
    </message>
    <message>
        <source>This shop was written by a newer version of the program and can only be looked at here. Bring this program up to date to go on working in it.</source>
        <translation>Este taller lo escribió una versión más nueva del programa y aquí solo se puede mirar. Actualizar el programa para seguir trabajando en él.</translation>
    </message>
    <message>
        <source>%1 holds no store but other things, such as &apos;%2&apos;. Name an empty folder or a new one.</source>
        <translation>%1 no tiene un almacén sino otras cosas, como &apos;%2&apos;. Nombrar una carpeta vacía o nueva.</translation>
    </message>
    <message>
        <source>the key of the backup needs %1 MiB of memory, which are not free; close other programs</source>
        <translation>la clave de la copia necesita %1 MiB de memoria, que no están libres; cerrar otros programas</translation>
    </message>
    <message>
        <source>passphrase: must have at least 8 bytes; several words are best</source>
        <translation>frase secreta: al menos 8 bytes; mejor varias palabras</translation>
    </message>
    <message>
        <source>find: at most 16 words at a time</source>
        <translation>búsqueda: como mucho 16 palabras a la vez</translation>
    </message>
    <message>
        <source>body: has %1 bytes, at most %2 are kept; shorten the text</source>
        <translation>body: tiene %1 bytes, se guardan como mucho %2; acortar el texto</translation>
    </message>
    <message>
        <source>media: a file must have between 1 byte and 256 MiB, this one has %1 bytes</source>
        <translation>media: un archivo debe tener entre 1 byte y 256 MiB, este tiene %1 bytes</translation>
    </message>
    <message>
        <source>media: the file %1 is missing. Put it back from a backup or an archive.</source>
        <translation>media: falta el archivo %1. Recuperarlo de una copia o un archivo.</translation>
    </message>
    <message>
        <source>%1: its content does not fit its name. Put it back from a backup or an archive.</source>
        <translation>%1: su contenido no casa con su nombre. Recuperarlo de una copia o un archivo.</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <translation>%1, trazo %2</translation>
    </message>
    <message>
        <source>blade %1</source>
        <translation>faston macho %1</translation>
    </message>
    <message>
        <source>receptacle %1</source>
        <translation>faston hembra %1</translation>
    </message>
    <message>
        <source>bullet %1</source>
        <translation>bala macho %1</translation>
    </message>
    <message>
        <source>bullet socket %1</source>
        <translation>bala hembra %1</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>anillo %1</translation>
    </message>
    <message>
        <source>fork %1</source>
        <translation>horquilla %1</translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation>pin %1</translation>
    </message>
    <message>
        <source>socket %1</source>
        <translation>zócalo %1</translation>
    </message>
    <message>
        <source>splice %1</source>
        <translation>empalme %1</translation>
    </message>
    <message>
        <source>bare %1</source>
        <translation>pelado %1</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date as it is read here: write year, month and day, such as 2026-11-25</source>
        <translation>&quot;%1&quot; aquí no se lee como fecha: escribir año, mes y día, por ejemplo 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day of the calendar</source>
        <translation>&quot;%1&quot; no es un día del calendario</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is out of range: the year must be from 1885 to 2200</source>
        <translation>&quot;%1&quot; está fuera: el año debe ir de 1885 a 2200</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2</source>
        <translation>&quot;%1&quot; no es un número: escribir cifras con un punto o una coma, por ejemplo 2.4 o 1/2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; divides by zero</source>
        <translation>&quot;%1&quot; divide por cero</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be a fraction or two values: write one number, a fraction above one as 1 1/4</source>
        <translation>&quot;%1&quot; podría ser una fracción o dos valores: escribir un número, una fracción mayor que uno como 1 1/4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one separator: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; tiene más de un separador: escribir el número sin grupos, por ejemplo 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be %2 or %3: write %4, or %5 with a point</source>
        <translation>&quot;%1&quot; podría ser %2 o %3: escribir %4, o %5 con punto</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is ambiguous: %2</source>
        <translation>&quot;%1&quot; es ambiguo: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit that is known here: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; no es aquí una unidad conocida: se pide %2, en %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a unit of %2: %3 is wanted here, in %4</source>
        <translation>&quot;%1&quot; es una unidad de %2: se pide %3, en %4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a gap inside: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; tiene un hueco dentro: escribir el número sin grupos, por ejemplo 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is beyond any number that is measured</source>
        <translation>&quot;%1&quot; pasa de todo lo que se mide</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; no tiene unidad: se pide %2, en %3</translation>
    </message>
    <message>
        <source>%1 is a unit of %2, %3 of %4: what fits is %5</source>
        <translation>%1 es una unidad de %2, %3 de %4: vale %5</translation>
    </message>
    <message>
        <source>write US gal or imp gal: they differ by a fifth</source>
        <translation>escribir US gal o imp gal: difieren en un quinto</translation>
    </message>
    <message>
        <source>write US pt or imp pt: they differ by a fifth</source>
        <translation>escribir US pt o imp pt: difieren en un quinto</translation>
    </message>
    <message>
        <source>write US fl oz or imp fl oz: they are not the same</source>
        <translation>escribir US fl oz o imp fl oz: no son iguales</translation>
    </message>
    <message>
        <source>write mpg(US) or mpg(imp): they differ by a fifth</source>
        <translation>escribir mpg(US) o mpg(imp): difieren en un quinto</translation>
    </message>
    <message>
        <source>write mohm for milliohm or Mohm for megaohm</source>
        <translation>escribir mohm para miliohmio o Mohm para megaohmio</translation>
    </message>
    <message>
        <source>no limit is known: the value is kept without a verdict</source>
        <translation>no se sabe el límite: el valor queda sin veredicto</translation>
    </message>
    <message>
        <source>the limit is in %1, the value in %2: what fits is %3</source>
        <translation>el límite está en %1, el valor en %2: vale %3</translation>
    </message>
    <message>
        <source>no instrument or uncertainty is known: the value is kept without a verdict</source>
        <translation>no se sabe el instrumento o la incertidumbre: el valor queda sin veredicto</translation>
    </message>
    <message>
        <source>the uncertainty is in %1: what fits is %2</source>
        <translation>la incertidumbre está en %1: vale %2</translation>
    </message>
    <message>
        <source>the uncertainty must be above zero: no instrument is without error</source>
        <translation>la incertidumbre debe ser mayor que cero: ningún instrumento está sin error</translation>
    </message>
    <message>
        <source>the lower limit is above the upper one</source>
        <translation>el límite inferior está por encima del superior</translation>
    </message>
    <message>
        <source>a torque wrench reads torque, not %1</source>
        <translation>una llave dinamométrica lee par, no %1</translation>
    </message>
    <message>
        <source>class %1 does not exist: type I has A to E, type II A to G</source>
        <translation>la clase %1 no existe: el tipo I va de A a E, el tipo II de A a G</translation>
    </message>
    <message>
        <source>(from memory: look at the certificate)</source>
        <translation>(de memoria: mirar el certificado)</translation>
    </message>
    <message>
        <source>%1 (from memory: look at the certificate)</source>
        <translation>%1 (de memoria: mirar el certificado)</translation>
    </message>
    <message>
        <source>tested by ISO 6789: worked %1 times at its largest torque, then read at %2 % of it</source>
        <translation>prueba según ISO 6789: %1 aprietes a su par máximo, luego lectura al %2 % de él</translation>
    </message>
    <message>
        <source>name: give the instrument one, as the shop calls it</source>
        <translation>nombre: darle uno, como se le llama en el taller</translation>
    </message>
    <message>
        <source>range: the upper end must be above the lower one</source>
        <translation>rango: el extremo superior debe estar sobre el inferior</translation>
    </message>
    <message>
        <source>resolution: give one division, or the last digit of the display</source>
        <translation>resolución: dar una división, o la última cifra de la pantalla</translation>
    </message>
    <message>
        <source>limit of error: its parts must not be negative</source>
        <translation>límite de error: sus partes no pueden ser negativas</translation>
    </message>
    <message>
        <source>limit of error: give it from the maker&apos;s sheet; it is never zero</source>
        <translation>límite de error: darlo de la hoja del fabricante; nunca es cero</translation>
    </message>
    <message>
        <source>%1 reads %2: %3</source>
        <translation>%1 lee %2: %3</translation>
    </message>
    <message>
        <source>%1 reads from %2 to %3, not %4: use another instrument</source>
        <translation>%1 lee de %2 a %3, no %4: usar otro instrumento</translation>
    </message>
    <message>
        <source>limit of error, %1 % of the reading (%2)</source>
        <translation>límite de error, %1 % de la lectura (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 % of full scale (%2)</source>
        <translation>límite de error, %1 % del fondo de escala (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 digits (%2)</source>
        <translation>límite de error, %1 dígitos (%2)</translation>
    </message>
    <message>
        <source>limit of error (%1)</source>
        <translation>límite de error (%1)</translation>
    </message>
    <message>
        <source>resolution, half a division</source>
        <translation>resolución, media división</translation>
    </message>
    <message>
        <source>feel of the hand</source>
        <translation>tacto de la mano</translation>
    </message>
    <message>
        <source>%1: calibration was due on %2; its limit of error can no longer be relied on</source>
        <translation>%1: la calibración vencía el %2; ya no se puede confiar en su límite de error</translation>
    </message>
    <message>
        <source>%1: no calibration is recorded</source>
        <translation>%1: sin calibración anotada</translation>
    </message>
    <message>
        <source>readings of different kinds: %1</source>
        <translation>lecturas de clases distintas: %1</translation>
    </message>
    <message>
        <source>mean of %1 readings: %2, spread (standard deviation) %3</source>
        <translation>media de %1 lecturas: %2, dispersión (desviación típica) %3</translation>
    </message>
    <message>
        <source>the limit is worked out here: the machine&apos;s manual wins</source>
        <translation>el límite está calculado aquí: el manual va primero</translation>
    </message>
    <message>
        <source>no reading was given</source>
        <translation>no se dio ninguna lectura</translation>
    </message>
    <message>
        <source>uncertainty as given, k = 2</source>
        <translation>incertidumbre como se dio, k = 2</translation>
    </message>
    <message>
        <source>ordinary instrument, from memory: replace by the maker&apos;s sheet</source>
        <translation>instrumento corriente, de memoria: sustituir por la hoja del fabricante</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2</source>
        <translation>dispersión de %1 lecturas entre raíz de %2</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2, widened for few readings</source>
        <translation>dispersión de %1 lecturas entre raíz de %2, ampliada por ser pocas</translation>
    </message>
    <message>
        <source>a spread needs two readings or more; given: %1</source>
        <translation>una dispersión pide dos lecturas o más; dadas: %1</translation>
    </message>
    <message>
        <source>every reading must be a number</source>
        <translation>cada lectura debe ser un número</translation>
    </message>
    <message>
        <source>largest reading: %1</source>
        <translation>mayor lectura: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date: write year, month and day such as 2026-11-25</source>
        <translation>&quot;%1&quot; no es una fecha: escribir año, mes y día, por ejemplo 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no type and class of ISO 6789-1: write I A to I E for one that shows the torque, II A to II G for one that is set</source>
        <translation>&quot;%1&quot; no es tipo y clase de ISO 6789-1: escribir I A a I E para la que muestra el par, II A a II G para la que se ajusta</translation>
    </message>
    <message>
        <source>must not be negative, given was &quot;%1&quot;</source>
        <translation>no puede ser negativo, se dio &quot;%1&quot;</translation>
    </message>
    <message>
        <source>as the shop entered it</source>
        <translation>como lo puso el taller</translation>
    </message>
    <message>
        <source>is for torque wrenches alone: leave it empty</source>
        <translation>es solo para llaves dinamométricas: dejarlo vacío</translation>
    </message>
    <message>
        <source>must be after the day of calibration</source>
        <translation>debe ir después del día de calibración</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % de la lectura</translation>
    </message>
    <message>
        <source>%1 % of full scale</source>
        <translation>%1 % del fondo de escala</translation>
    </message>
    <message>
        <source>%1 digits</source>
        <translation>%1 dígitos</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>more than 99.9 %</source>
        <translation>más del 99,9 %</translation>
    </message>
    <message>
        <source>less than 0.1 %</source>
        <translation>menos del 0,1 %</translation>
    </message>
    <message>
        <source>a better instrument: the limits are closer together than twice the uncertainty, so that no value could be accepted with this one</source>
        <translation>un instrumento mejor: los límites están más juntos que el doble de la incertidumbre, con este no se podría aceptar ningún valor</translation>
    </message>
    <message>
        <source>the value lies on the limit: no instrument will settle it; adjust or renew, then measure again</source>
        <translation>el valor está en el límite: ningún instrumento lo aclarará; ajustar o cambiar, y medir otra vez</translation>
    </message>
    <message>
        <source>a better instrument: an expanded uncertainty below %1 would settle it</source>
        <translation>un instrumento mejor: una incertidumbre expandida menor que %1 lo aclararía</translation>
    </message>
    <message>
        <source>more readings: about %1 in all, if their mean stays</source>
        <translation>más lecturas: unas %1 en total, si su media se mantiene</translation>
    </message>
    <message>
        <source>measured %1, expanded uncertainty %2 (k = 2), standard %3</source>
        <translation>medido %1, incertidumbre expandida %2 (k = 2), típica %3</translation>
    </message>
    <message>
        <source>lower limit %1 moved inward by U (guard band, ISO 14253-1): accept from %2</source>
        <translation>límite inferior %1 metido hacia dentro en U (banda de guarda, ISO 14253-1): aceptar desde %2</translation>
    </message>
    <message>
        <source>upper limit %1 moved inward by U (guard band, ISO 14253-1): accept up to %2</source>
        <translation>límite superior %1 metido hacia dentro en U (banda de guarda, ISO 14253-1): aceptar hasta %2</translation>
    </message>
    <message>
        <source>lower limit %1 as they stand (simple acceptance): accept from %2</source>
        <translation>límite inferior %1 tal cual (aceptación simple): aceptar desde %2</translation>
    </message>
    <message>
        <source>upper limit %1 as they stand (simple acceptance): accept up to %2</source>
        <translation>límite superior %1 tal cual (aceptación simple): aceptar hasta %2</translation>
    </message>
    <message>
        <source>probability that the true value conforms (JCGM 106): %1</source>
        <translation>probabilidad de que el valor verdadero cumpla (JCGM 106): %1</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>veredicto: %1</translation>
    </message>
    <message>
        <source>manual, %1</source>
        <translation>manual, %1</translation>
    </message>
    <message>
        <source>shop record, %1</source>
        <translation>datos del taller, %1</translation>
    </message>
    <message>
        <source>standard, %1</source>
        <translation>norma, %1</translation>
    </message>
    <message>
        <source>worked out here, %1</source>
        <translation>calculado aquí, %1</translation>
    </message>
    <message>
        <source>combined standard uncertainty u = root of the sum of squares = %1</source>
        <translation>incertidumbre típica combinada u = raíz de la suma de cuadrados = %1</translation>
    </message>
    <message>
        <source>expanded uncertainty U = 2 u = %1 (k = 2, about 95 %)</source>
        <translation>incertidumbre expandida U = 2 u = %1 (k = 2, un 95 %)</translation>
    </message>
    <message>
        <source>%1: %2, rectangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, rectangular: entre %3 da u = %4</translation>
    </message>
    <message>
        <source>%1: %2, triangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, triangular: entre %3 da u = %4</translation>
    </message>
    <message>
        <source>%1: %2, normal, k = 2: divided by %3 gives u = %4</source>
        <translation>%1: %2, normal, k = 2: entre %3 da u = %4</translation>
    </message>
    <message>
        <source>%1: %2, standard</source>
        <translation>%1: %2, típica</translation>
    </message>
    <message>
        <source>%1 is not among the grades that the machine allows: %2</source>
        <translation>%1 no está entre los tipos que admite el vehículo: %2</translation>
    </message>
    <message>
        <source>Automatic with a belt</source>
        <translation>Automático de correa</translation>
    </message>
    <message>
        <source>DOT 5 is silicone: it never mixes with DOT 3, 4 or 5.1</source>
        <translation>el DOT 5 es silicona: no se mezcla nunca con DOT 3, 4 o 5.1</translation>
    </message>
    <message>
        <source>Electric start</source>
        <translation>Arranque eléctrico</translation>
    </message>
    <message>
        <source>Every machine</source>
        <translation>Todos los vehículos</translation>
    </message>
    <message>
        <source>Four-stroke engine</source>
        <translation>Motor de cuatro tiempos</translation>
    </message>
    <message>
        <source>Front disc brake</source>
        <translation>Freno de disco delantero</translation>
    </message>
    <message>
        <source>Front drum brake</source>
        <translation>Freno de tambor delantero</translation>
    </message>
    <message>
        <source>Gearbox with clutch</source>
        <translation>Cambio con embrague</translation>
    </message>
    <message>
        <source>Kick start</source>
        <translation>Arranque a pedal</translation>
    </message>
    <message>
        <source>Photos as found</source>
        <translation>Fotos como llegó</translation>
    </message>
    <message>
        <source>Rear disc brake</source>
        <translation>Freno de disco trasero</translation>
    </message>
    <message>
        <source>Rear drum brake</source>
        <translation>Freno de tambor trasero</translation>
    </message>
    <message>
        <source>Two-stroke engine</source>
        <translation>Motor de dos tiempos</translation>
    </message>
    <message>
        <source>What works when it comes in</source>
        <translation>Qué funciona al llegar</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>presión absoluta</translation>
    </message>
    <message>
        <source>adjust the free play of the brake</source>
        <translation>ajustar el juego del freno</translation>
    </message>
    <message>
        <source>adjust the free play of the clutch</source>
        <translation>ajustar el juego del embrague</translation>
    </message>
    <message>
        <source>air filter: clean and seated</source>
        <translation>filtro de aire: limpio y asentado</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>area</source>
        <translation>superficie</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automático</translation>
    </message>
    <message>
        <source>axle nuts: tight, secured as the maker secured them</source>
        <translation>tuercas de eje: apretadas, aseguradas como de fábrica</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>pelado</translation>
    </message>
    <message>
        <source>base gasket</source>
        <translation>junta de base</translation>
    </message>
    <message>
        <source>battery acid: goggles and gloves, water at hand, acid into water and never the other way</source>
        <translation>ácido de batería: gafas y guantes, agua a mano, el ácido al agua y nunca al revés</translation>
    </message>
    <message>
        <source>battery negative off first, on last</source>
        <translation>negativo de la batería fuera primero, puesto al final</translation>
    </message>
    <message>
        <source>battery negative or chassis earth direct</source>
        <translation>negativo de batería o masa directa del bastidor</translation>
    </message>
    <message>
        <source>battery positive direct (unswitched)</source>
        <translation>positivo directo de batería (permanente)</translation>
    </message>
    <message>
        <source>battery: case whole, terminals clean, strapped down, vent hose in place</source>
        <translation>batería: caja entera, bornes limpios, sujeta, tubo de respiración en su sitio</translation>
    </message>
    <message>
        <source>belt: width and cracks, age</source>
        <translation>correa: anchura y grietas, edad</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>faston macho</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>purgar el freno hasta que la maneta quede dura</translation>
    </message>
    <message>
        <source>bleed the oil pump; set it to its mark</source>
        <translation>purgar la bomba de aceite; ponerla en su marca</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>brake fluid eats paint and skin; only fresh fluid of the grade that the manual names</source>
        <translation>el líquido de frenos come pintura y piel; solo nuevo y del tipo que nombra el manual</translation>
    </message>
    <message>
        <source>brake, front</source>
        <translation>freno, delante</translation>
    </message>
    <message>
        <source>brake, rear</source>
        <translation>freno, detrás</translation>
    </message>
    <message>
        <source>breather hose: connected, not blocked</source>
        <translation>tubo de respiración: conectado, sin atascar</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>bala macho</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>bala hembra</translation>
    </message>
    <message>
        <source>cables and hoses: nothing pulls tight from lock to lock</source>
        <translation>cables de mando y latiguillos: nada tira de tope a tope</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>calibre</translation>
    </message>
    <message>
        <source>centre the shoes and adjust the free play of the brake</source>
        <translation>centrar las zapatas y ajustar el juego del freno</translation>
    </message>
    <message>
        <source>chain guard: in place</source>
        <translation>cubrecadena: en su sitio</translation>
    </message>
    <message>
        <source>charge warning lamp</source>
        <translation>testigo de carga</translation>
    </message>
    <message>
        <source>charges</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>charging: voltage at the battery rises with the engine running</source>
        <translation>carga: la tensión en la batería sube con el motor en marcha</translation>
    </message>
    <message>
        <source>chassis</source>
        <translation>chasis</translation>
    </message>
    <message>
        <source>circlips of the pin</source>
        <translation>circlips del bulón</translation>
    </message>
    <message>
        <source>clutch</source>
        <translation>embrague</translation>
    </message>
    <message>
        <source>clutch: lever play right, frees and bites without dragging</source>
        <translation>embrague: juego de maneta correcto, suelta y toma sin arrastrar</translation>
    </message>
    <message>
        <source>compression-gauge</source>
        <translation>compresímetro</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>conector</translation>
    </message>
    <message>
        <source>consumption</source>
        <translation>consumo</translation>
    </message>
    <message>
        <source>controls</source>
        <translation>mandos</translation>
    </message>
    <message>
        <source>copper paste on the studs</source>
        <translation>pasta de cobre en los espárragos</translation>
    </message>
    <message>
        <source>cover and its seal: in place, the cooling air free</source>
        <translation>tapa y su junta: en su sitio, el aire de refrigeración libre</translation>
    </message>
    <message>
        <source>crush washers of the banjo</source>
        <translation>arandelas de estanqueidad del racor</translation>
    </message>
    <message>
        <source>crush washers of the banjo, if it was opened</source>
        <translation>arandelas de estanqueidad del racor, si se abrió</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>cylinder base and crankshaft seals: dry</source>
        <translation>base del cilindro y retenes del cigüeñal: secos</translation>
    </message>
    <message>
        <source>damage that was there</source>
        <translation>daños que ya estaban</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>depth-gauge</source>
        <translation>profundímetro</translation>
    </message>
    <message>
        <source>dipped (low) beam</source>
        <translation>luz de cruce</translation>
    </message>
    <message>
        <source>do not ride before the brake is proved; the machine&apos;s manual and licensed practice come first</source>
        <translation>no circular antes de probar el freno; el manual y la buena práctica van primero</translation>
    </message>
    <message>
        <source>do not ride yet: %1 (%2)</source>
        <translation>no circular aún: %1 (%2)</translation>
    </message>
    <message>
        <source>do not ride: %1 is not on again</source>
        <translation>no circular: %1 no está montado</translation>
    </message>
    <message>
        <source>do not start yet: %1 (%2)</source>
        <translation>no arrancar aún: %1 (%2)</translation>
    </message>
    <message>
        <source>do not start: %1 is not on again</source>
        <translation>no arrancar: %1 no está montado</translation>
    </message>
    <message>
        <source>drive: takes up smoothly, no squeal, no slip</source>
        <translation>transmisión: toma suave, no chilla, no patina</translation>
    </message>
    <message>
        <source>dynamo field</source>
        <translation>dinamo, excitación</translation>
    </message>
    <message>
        <source>dynamo negative</source>
        <translation>dinamo, negativo</translation>
    </message>
    <message>
        <source>dynamo or generator positive to regulator</source>
        <translation>dinamo o alternador, positivo al regulador</translation>
    </message>
    <message>
        <source>each wire read back against the map: %1</source>
        <translation>cada cable releído con el plano: %1</translation>
    </message>
    <message>
        <source>electric charge</source>
        <translation>carga eléctrica</translation>
    </message>
    <message>
        <source>electric motor main connection</source>
        <translation>motor eléctrico, borne principal</translation>
    </message>
    <message>
        <source>electric motor return line</source>
        <translation>motor eléctrico, retorno</translation>
    </message>
    <message>
        <source>electric start</source>
        <translation>arranque eléctrico</translation>
    </message>
    <message>
        <source>electrics</source>
        <translation>electricidad</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>energía</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>motor</translation>
    </message>
    <message>
        <source>engine and exhaust</source>
        <translation>motor y escape</translation>
    </message>
    <message>
        <source>engine oil: level, no fuel or water in it</source>
        <translation>aceite de motor: nivel, sin gasolina ni agua dentro</translation>
    </message>
    <message>
        <source>engine, left side</source>
        <translation>motor, lado izquierdo</translation>
    </message>
    <message>
        <source>engine, right side</source>
        <translation>motor, lado derecho</translation>
    </message>
    <message>
        <source>engine: no leaks, mounts tight</source>
        <translation>motor: sin fugas, soportes apretados</translation>
    </message>
    <message>
        <source>every fastener in and tight: %1 (%2)</source>
        <translation>toda la tornillería puesta y apretada: %1 (%2)</translation>
    </message>
    <message>
        <source>everyday plug-in relay: normally closed output</source>
        <translation>relé enchufable corriente: salida normalmente cerrada</translation>
    </message>
    <message>
        <source>everyday plug-in relay: switched output (normally open)</source>
        <translation>relé enchufable corriente: salida conmutada (normalmente abierta)</translation>
    </message>
    <message>
        <source>exhaust gasket</source>
        <translation>junta de escape</translation>
    </message>
    <message>
        <source>exhaust port and silencer: not choked with carbon</source>
        <translation>lumbrera de escape y silenciador: sin carbonilla</translation>
    </message>
    <message>
        <source>exhaust: no leaks, fastened, heat shield in place</source>
        <translation>escape: sin fugas, sujeto, protector en su sitio</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>galgas</translation>
    </message>
    <message>
        <source>feeler-gauge</source>
        <translation>galgas</translation>
    </message>
    <message>
        <source>fill and bleed the cooling</source>
        <translation>llenar y purgar la refrigeración</translation>
    </message>
    <message>
        <source>fill with oil and look at the level</source>
        <translation>llenar de aceite y mirar el nivel</translation>
    </message>
    <message>
        <source>filled again, level right, no leak: %1 (let out: %2)</source>
        <translation>rellenado, nivel correcto, sin fugas: %1 (vaciado: %2)</translation>
    </message>
    <message>
        <source>final drive chain: slack right at its tightest place, no stiff links</source>
        <translation>cadena: tensión correcta en el punto más tenso, sin eslabones duros</translation>
    </message>
    <message>
        <source>final drive oil: level, no leak at the wheel shaft</source>
        <translation>aceite de la transmisión final: nivel, sin fuga en el eje de rueda</translation>
    </message>
    <message>
        <source>flasher output, second circuit</source>
        <translation>intermitencia, salida del segundo circuito</translation>
    </message>
    <message>
        <source>flasher unit input</source>
        <translation>intermitencia, entrada</translation>
    </message>
    <message>
        <source>flasher unit output (pulsed) to the indicator switch</source>
        <translation>intermitencia, salida (a impulsos) al conmutador</translation>
    </message>
    <message>
        <source>fog lamp</source>
        <translation>luz antiniebla</translation>
    </message>
    <message>
        <source>force</source>
        <translation>fuerza</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>horquilla</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <translation>cuatro tiempos</translation>
    </message>
    <message>
        <source>frame number</source>
        <translation>número de bastidor</translation>
    </message>
    <message>
        <source>frame number: readable, the same as in the papers</source>
        <translation>número de bastidor: legible, igual que en los papeles</translation>
    </message>
    <message>
        <source>frame: no cracks at the welds, steering head and swing arm pivot</source>
        <translation>bastidor: sin grietas en soldaduras, pipa de dirección y eje del basculante</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>desde detrás</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>desde delante</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>desde la izquierda</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>desde la derecha</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno delantero</translation>
    </message>
    <message>
        <source>front disc brake: disc thickness and run-out, no cracks</source>
        <translation>disco delantero: grosor y alabeo del disco, sin grietas</translation>
    </message>
    <message>
        <source>front disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disco delantero: latiguillo y racores secos, sin grietas, nivel y edad del líquido</translation>
    </message>
    <message>
        <source>front disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disco delantero: maneta o pedal firme, no cede con presión</translation>
    </message>
    <message>
        <source>front disc brake: pads, both sides</source>
        <translation>disco delantero: pastillas, los dos lados</translation>
    </message>
    <message>
        <source>front drum brake: cable or rod, adjuster and return spring</source>
        <translation>tambor delantero: cable o varilla, tensor y muelle de retorno</translation>
    </message>
    <message>
        <source>front drum brake: holds, lets go at once, does not grab</source>
        <translation>tambor delantero: sujeta, suelta al momento, no da tirones</translation>
    </message>
    <message>
        <source>front drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tambor delantero: recorrido de maneta o pedal y marca de desgaste de la leva</translation>
    </message>
    <message>
        <source>front fork: no play, dry stanchions, springs back smoothly</source>
        <translation>horquilla: sin juego, barras secas, vuelve suave</translation>
    </message>
    <message>
        <source>front tyre, date code</source>
        <translation>neumático delantero, código de fecha</translation>
    </message>
    <message>
        <source>front tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>neumático delantero: dibujo, edad por su código DOT, sin grietas, medida de los papeles</translation>
    </message>
    <message>
        <source>front wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>rueda delantera: rodamiento sin juego, llanta recta, radios o tornillos apretados</translation>
    </message>
    <message>
        <source>fuel and air</source>
        <translation>gasolina y aire</translation>
    </message>
    <message>
        <source>fuel off and away from sparks; no flame, rags in a closed tin</source>
        <translation>gasolina cerrada y lejos de chispas; sin llamas, trapos en un bote cerrado</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes</source>
        <translation>gasolina abierta: ni una gota en cinco minutos</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes; throttle snaps shut</source>
        <translation>gasolina abierta: ni una gota en cinco minutos; el gas cierra de golpe</translation>
    </message>
    <message>
        <source>fuel tank, tap and hoses: dry, not cracked, cap vents</source>
        <translation>depósito, grifo y tubos: secos, sin grietas, el tapón respira</translation>
    </message>
    <message>
        <source>fuse: of the right value, no wire in its place</source>
        <translation>fusible: del valor correcto, sin alambre en su lugar</translation>
    </message>
    <message>
        <source>gasket and oil seals</source>
        <translation>junta y retenes</translation>
    </message>
    <message>
        <source>gasket and seal</source>
        <translation>junta y retén</translation>
    </message>
    <message>
        <source>gaskets of the inlet</source>
        <translation>juntas de la admisión</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>presión manométrica</translation>
    </message>
    <message>
        <source>gearbox oil: level, clean</source>
        <translation>aceite del cambio: nivel, limpio</translation>
    </message>
    <message>
        <source>gears</source>
        <translation>marchas</translation>
    </message>
    <message>
        <source>gears and chain</source>
        <translation>marchas y cadena</translation>
    </message>
    <message>
        <source>gears: all engage and stay in, neutral is found</source>
        <translation>marchas: entran y quedan todas, el punto muerto se encuentra</translation>
    </message>
    <message>
        <source>generator output, battery positive</source>
        <translation>salida del generador, positivo de batería</translation>
    </message>
    <message>
        <source>generator, battery negative</source>
        <translation>generador, negativo de batería</translation>
    </message>
    <message>
        <source>grease on the bushes</source>
        <translation>grasa en los casquillos</translation>
    </message>
    <message>
        <source>grease on the cam only, none near the linings</source>
        <translation>grasa solo en la leva, nada cerca de los forros</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>handlebar, left side</source>
        <translation>manillar, lado izquierdo</translation>
    </message>
    <message>
        <source>handlebar, levers and grips: tight, free of cracks, ends closed</source>
        <translation>manillar, manetas y puños: firmes, sin grietas, puntas cerradas</translation>
    </message>
    <message>
        <source>handlebar, right side</source>
        <translation>manillar, lado derecho</translation>
    </message>
    <message>
        <source>head gasket</source>
        <translation>junta de culata</translation>
    </message>
    <message>
        <source>headlamp feed</source>
        <translation>alimentación del faro</translation>
    </message>
    <message>
        <source>headlamp, high beam</source>
        <translation>faro, larga</translation>
    </message>
    <message>
        <source>headlamp, low beam</source>
        <translation>faro, cruce</translation>
    </message>
    <message>
        <source>headlamp: low and high beam, tell-tale, aim</source>
        <translation>faro: cruce y larga, testigo, reglaje</translation>
    </message>
    <message>
        <source>horn</source>
        <translation>claxon</translation>
    </message>
    <message>
        <source>horn: loud and clear</source>
        <translation>claxon: fuerte y claro</translation>
    </message>
    <message>
        <source>hose clips that have lost their spring</source>
        <translation>abrazaderas que perdieron su muelle</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densímetro</translation>
    </message>
    <message>
        <source>idle: the rear wheel does not creep when it stands on the ground</source>
        <translation>ralentí: la rueda trasera en el suelo no arrastra</translation>
    </message>
    <message>
        <source>idles and takes the throttle</source>
        <translation>tiene ralentí y toma gas</translation>
    </message>
    <message>
        <source>ignition coil high-tension output</source>
        <translation>bobina de encendido, salida de alta tensión</translation>
    </message>
    <message>
        <source>ignition coil or contact breaker, low-tension side</source>
        <translation>bobina de encendido o ruptor, lado de baja tensión</translation>
    </message>
    <message>
        <source>ignition off; high tension can hurt: stop the engine before you touch a lead</source>
        <translation>encendido apagado; la alta tensión puede herir: parar el motor antes de tocar un cable</translation>
    </message>
    <message>
        <source>ignition switch and stop switch: stop the engine</source>
        <translation>llave de contacto e interruptor de paro: paran el motor</translation>
    </message>
    <message>
        <source>in another currency, not in the sum: %1, %2 %3</source>
        <translation>en otra moneda, fuera de la suma: %1, %2 %3</translation>
    </message>
    <message>
        <source>instrument lamps</source>
        <translation>luces de instrumentos</translation>
    </message>
    <message>
        <source>instruments and odometer</source>
        <translation>instrumentos y cuentakilómetros</translation>
    </message>
    <message>
        <source>kick start</source>
        <translation>arranque a pedal</translation>
    </message>
    <message>
        <source>kick start: engages, springs back, does not slip</source>
        <translation>pedal de arranque: engrana, vuelve, no patina</translation>
    </message>
    <message>
        <source>lamps</source>
        <translation>luces</translation>
    </message>
    <message>
        <source>left direction indicators</source>
        <translation>intermitentes izquierdos</translation>
    </message>
    <message>
        <source>left out: %1 (%2)</source>
        <translation>dejado: %1 (%2)</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>let the exhaust and the engine cool down first</source>
        <translation>dejar enfriar antes el escape y el motor</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>azul claro</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>verde claro</translation>
    </message>
    <message>
        <source>lights and signals</source>
        <translation>luces y señales</translation>
    </message>
    <message>
        <source>look at the oil level</source>
        <translation>mirar el nivel de aceite</translation>
    </message>
    <message>
        <source>loom: no bare or twisted wires, no chafing at the steering head</source>
        <translation>mazo: sin cables pelados o retorcidos, sin roces en la pipa</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>terminales sueltos</translation>
    </message>
    <message>
        <source>magneto-generator alternating-current output or rectifier input</source>
        <translation>volante magnético, salida alterna o entrada del rectificador</translation>
    </message>
    <message>
        <source>magneto-generator charging-coil output</source>
        <translation>volante magnético, salida de la bobina de carga</translation>
    </message>
    <message>
        <source>main (high) beam and its tell-tale</source>
        <translation>luz larga y su testigo</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>cara de contacto</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micrómetro</translation>
    </message>
    <message>
        <source>mirrors: whole, stay where they are set</source>
        <translation>espejos: enteros, quedan como se ponen</translation>
    </message>
    <message>
        <source>move it by hand: no side play</source>
        <translation>moverlo a mano: sin juego lateral</translation>
    </message>
    <message>
        <source>moves freely at both locks, free play right: %1</source>
        <translation>libre en los dos topes, juego correcto: %1</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>multímetro</translation>
    </message>
    <message>
        <source>negative lead on last; tight, and covered</source>
        <translation>negativo al final; apretado y tapado</translation>
    </message>
    <message>
        <source>next: %1 (%2)</source>
        <translation>sigue: %1 (%2)</translation>
    </message>
    <message>
        <source>next: go on stripping, or refit: %1</source>
        <translation>sigue: seguir desmontando, o montar: %1</translation>
    </message>
    <message>
        <source>next: look it over, or strip the first part</source>
        <translation>sigue: repasarlo, o desmontar la primera pieza</translation>
    </message>
    <message>
        <source>next: photos as found, and what works</source>
        <translation>sigue: fotos como llegó, y qué funciona</translation>
    </message>
    <message>
        <source>next: prove it and hand it over</source>
        <translation>sigue: probar y entregar</translation>
    </message>
    <message>
        <source>next: refit %1</source>
        <translation>sigue: montar %1</translation>
    </message>
    <message>
        <source>next: refit %1, bag %2</source>
        <translation>sigue: montar %1, bolsa %2</translation>
    </message>
    <message>
        <source>next: settle what is unsafe: %1</source>
        <translation>sigue: resolver el peligro: %1</translation>
    </message>
    <message>
        <source>no compressed air on old brake dust; mask, wipe wet</source>
        <translation>nada de aire a presión sobre polvo viejo de freno; mascarilla, limpiar en húmedo</translation>
    </message>
    <message>
        <source>no leaks</source>
        <translation>sin fugas</translation>
    </message>
    <message>
        <source>no price is known: %1</source>
        <translation>no se sabe el precio: %1</translation>
    </message>
    <message>
        <source>nobody knows when the container was opened: brake fluid draws water, take a fresh one</source>
        <translation>nadie sabe cuándo se abrió el envase: el líquido de frenos toma agua, coger uno nuevo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>not done yet: %1 (%2)</source>
        <translation>aún sin hacer: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved, left out: %1 (%2)</source>
        <translation>no probado, dejado: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved: %1</source>
        <translation>no probado: %1</translation>
    </message>
    <message>
        <source>nothing open</source>
        <translation>nada pendiente</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>number plate lamp</source>
        <translation>luz de matrícula</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>oil on its lip</source>
        <translation>aceite en su labio</translation>
    </message>
    <message>
        <source>oil on the bore</source>
        <translation>aceite en la camisa</translation>
    </message>
    <message>
        <source>oil pump: turns with the throttle, marks meet, or is blanked off knowingly</source>
        <translation>bomba de aceite: gira con el gas, las marcas coinciden, o anulada a propósito</translation>
    </message>
    <message>
        <source>oil: tank filled and its hose full, or the tank holds premix</source>
        <translation>aceite: depósito lleno y su tubo lleno, o mezcla en el depósito</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>other instrument</source>
        <translation>otro instrumento</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>papers and frame</source>
        <translation>papeles y bastidor</translation>
    </message>
    <message>
        <source>parking lamp</source>
        <translation>luz de estacionamiento</translation>
    </message>
    <message>
        <source>parking lamp, left</source>
        <translation>luz de estacionamiento izquierda</translation>
    </message>
    <message>
        <source>parking lamp, right</source>
        <translation>luz de estacionamiento derecha</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pin</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>pressure difference</source>
        <translation>diferencia de presión</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>manómetro</translation>
    </message>
    <message>
        <source>pump the lever until the brake holds; bleed it if the hose was opened</source>
        <translation>bombear con la maneta hasta que el freno sujete; purgar si se abrió el latiguillo</translation>
    </message>
    <message>
        <source>push the fork down: it comes back smoothly and nothing leaks</source>
        <translation>hundir la horquilla: vuelve suave y nada pierde</translation>
    </message>
    <message>
        <source>push the tail down: nothing touches or knocks</source>
        <translation>hundir la cola: nada roza ni golpea</translation>
    </message>
    <message>
        <source>rear brake</source>
        <translation>freno trasero</translation>
    </message>
    <message>
        <source>rear disc brake: disc thickness and run-out, no cracks</source>
        <translation>disco trasero: grosor y alabeo del disco, sin grietas</translation>
    </message>
    <message>
        <source>rear disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disco trasero: latiguillo y racores secos, sin grietas, nivel y edad del líquido</translation>
    </message>
    <message>
        <source>rear disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disco trasero: maneta o pedal firme, no cede con presión</translation>
    </message>
    <message>
        <source>rear disc brake: pads, both sides</source>
        <translation>disco trasero: pastillas, los dos lados</translation>
    </message>
    <message>
        <source>rear drum brake: cable or rod, adjuster and return spring</source>
        <translation>tambor trasero: cable o varilla, tensor y muelle de retorno</translation>
    </message>
    <message>
        <source>rear drum brake: holds, lets go at once, does not grab</source>
        <translation>tambor trasero: sujeta, suelta al momento, no da tirones</translation>
    </message>
    <message>
        <source>rear drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tambor trasero: recorrido de maneta o pedal y marca de desgaste de la leva</translation>
    </message>
    <message>
        <source>rear suspension: no play in the bushes, damper dry</source>
        <translation>suspensión trasera: casquillos sin juego, amortiguador seco</translation>
    </message>
    <message>
        <source>rear tyre, date code</source>
        <translation>neumático trasero, código de fecha</translation>
    </message>
    <message>
        <source>rear tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>neumático trasero: dibujo, edad por su código DOT, sin grietas, medida de los papeles</translation>
    </message>
    <message>
        <source>rear wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>rueda trasera: rodamiento sin juego, llanta recta, radios o tornillos apretados</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>faston hembra</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>reflectors: there and whole</source>
        <translation>catadióptricos: están y enteros</translation>
    </message>
    <message>
        <source>relay coil end (to earth side)</source>
        <translation>bobina de relé, final (hacia masa)</translation>
    </message>
    <message>
        <source>relay coil start (feed side)</source>
        <translation>bobina de relé, principio (alimentación)</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>resistencia</translation>
    </message>
    <message>
        <source>right direction indicators</source>
        <translation>intermitentes derechos</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>anillo</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <translation>régimen</translation>
    </message>
    <message>
        <source>round not finished: %1, %2 checks without an answer</source>
        <translation>ronda sin acabar: %1, %2 controles sin respuesta</translation>
    </message>
    <message>
        <source>round the machine</source>
        <translation>alrededor del vehículo</translation>
    </message>
    <message>
        <source>runs as on its photo, clipped, dry under pressure: %1</source>
        <translation>va como en su foto, sujeto, seco con presión: %1</translation>
    </message>
    <message>
        <source>sealing washer of the plug</source>
        <translation>arandela de estanqueidad del tapón</translation>
    </message>
    <message>
        <source>self-locking nut of its axle</source>
        <translation>tuerca autoblocante de su eje</translation>
    </message>
    <message>
        <source>self-locking nut or split pin of the axle</source>
        <translation>tuerca autoblocante o pasador de aletas del eje</translation>
    </message>
    <message>
        <source>self-locking nuts of the shock</source>
        <translation>tuercas autoblocantes del amortiguador</translation>
    </message>
    <message>
        <source>set the pressure cold</source>
        <translation>poner la presión en frío</translation>
    </message>
    <message>
        <source>set the slack of the chain; clip closed to the front</source>
        <translation>ajustar la tensión de la cadena; clip con el lado cerrado hacia delante</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>masa común</translation>
    </message>
    <message>
        <source>shop record</source>
        <translation>datos del taller</translation>
    </message>
    <message>
        <source>short-circuit (kill) terminal of a magneto ignition</source>
        <translation>borne de masa (paro) de un encendido por magneto</translation>
    </message>
    <message>
        <source>side or position lamp on motorcycles and mopeds</source>
        <translation>luz de posición en motos y ciclomotores</translation>
    </message>
    <message>
        <source>signals</source>
        <translation>señales</translation>
    </message>
    <message>
        <source>sits as it did, nothing left over: %1</source>
        <translation>asienta como antes, no sobra nada: %1</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>zócalo</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>empalme</translation>
    </message>
    <message>
        <source>spring clip of the joining link</source>
        <translation>clip del eslabón de unión</translation>
    </message>
    <message>
        <source>springs under load: hold them before the last bolt comes out</source>
        <translation>muelles con tensión: sujetarlos antes de que salga el último tornillo</translation>
    </message>
    <message>
        <source>sprockets: teeth not hooked, nuts secured</source>
        <translation>piñón y corona: dientes sin gancho, tuercas aseguradas</translation>
    </message>
    <message>
        <source>stand: springs back, holds the machine upright</source>
        <translation>caballete: vuelve, sujeta el vehículo derecho</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>starter control (solenoid pull-in)</source>
        <translation>mando de arranque (solenoide)</translation>
    </message>
    <message>
        <source>starter relay output or starter input (main current)</source>
        <translation>salida del relé de arranque o entrada del motor de arranque (corriente principal)</translation>
    </message>
    <message>
        <source>starter: turns the engine at once, disengages</source>
        <translation>motor de arranque: gira el motor al momento, se desacopla</translation>
    </message>
    <message>
        <source>starting interlock: starts only with the brake pulled, the clutch pulled or in neutral, as built</source>
        <translation>bloqueo de arranque: arranca solo con freno apretado, embrague tirado o punto muerto, según modelo</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>arranca</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>steering and wheels without play</source>
        <translation>dirección y ruedas sin juego</translation>
    </message>
    <message>
        <source>steering head: no play, no notch, no tight spot</source>
        <translation>pipa de dirección: sin juego, sin muescas, sin puntos duros</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>luz de freno</translation>
    </message>
    <message>
        <source>stop lamp, front lever</source>
        <translation>luz de freno, maneta delantera</translation>
    </message>
    <message>
        <source>stop lamp, rear</source>
        <translation>luz de freno, trasera</translation>
    </message>
    <message>
        <source>stop lamp: from the front lever and from the rear lever or pedal</source>
        <translation>luz de freno: desde la maneta delantera y la maneta o pedal trasero</translation>
    </message>
    <message>
        <source>stopped after a photo</source>
        <translation>parado tras una foto</translation>
    </message>
    <message>
        <source>stopped after measuring: %1</source>
        <translation>parado tras medir: %1</translation>
    </message>
    <message>
        <source>stopped after noting: %1</source>
        <translation>parado tras el hallazgo: %1</translation>
    </message>
    <message>
        <source>stopped after refitting: %1</source>
        <translation>parado tras montar: %1</translation>
    </message>
    <message>
        <source>stopped after: %1</source>
        <translation>parado tras: %1</translation>
    </message>
    <message>
        <source>stopped at the part: %1</source>
        <translation>parado en el recambio: %1</translation>
    </message>
    <message>
        <source>stopped at the wiring of: %1</source>
        <translation>parado en los cables de: %1</translation>
    </message>
    <message>
        <source>strap the machine on the lift before weight comes off</source>
        <translation>amarrar el vehículo en el elevador antes de quitar peso</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>tensión mecánica</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>suspensión</translation>
    </message>
    <message>
        <source>swing arm or engine mount: no side play</source>
        <translation>basculante o soporte del motor: sin juego lateral</translation>
    </message>
    <message>
        <source>switched battery positive (output of the ignition switch)</source>
        <translation>positivo con contacto (salida de la llave)</translation>
    </message>
    <message>
        <source>switched earth: return to negative through a switch or relay</source>
        <translation>masa conmutada: retorno al negativo por un interruptor o relé</translation>
    </message>
    <message>
        <source>switched positive after a ballast resistor</source>
        <translation>positivo con contacto tras la resistencia de balasto</translation>
    </message>
    <message>
        <source>tail lamp</source>
        <translation>luz trasera</translation>
    </message>
    <message>
        <source>tail lamp and number plate lamp</source>
        <translation>luz trasera y luz de matrícula</translation>
    </message>
    <message>
        <source>tail or side lighting, left</source>
        <translation>luz trasera o de posición izquierda</translation>
    </message>
    <message>
        <source>tail or side lighting, right</source>
        <translation>luz trasera o de posición derecha</translation>
    </message>
    <message>
        <source>tail, side-marker, number-plate and instrument lighting</source>
        <translation>luces traseras, de gálibo, de matrícula y de instrumentos</translation>
    </message>
    <message>
        <source>taken in, nothing done yet</source>
        <translation>recibido, aún nada hecho</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>diferencia de temperatura</translation>
    </message>
    <message>
        <source>terminal grease</source>
        <translation>grasa para bornes</translation>
    </message>
    <message>
        <source>the container cannot have been opened on %1: that day is to come</source>
        <translation>el envase no puede haberse abierto el %1: ese día está por venir</translation>
    </message>
    <message>
        <source>the container was opened %1 days ago, on %2: brake fluid draws water, take a fresh one</source>
        <translation>el envase se abrió hace %1 días, el %2: el líquido de frenos toma agua, coger uno nuevo</translation>
    </message>
    <message>
        <source>the day of opening is not clear: write it as 2026-11-02</source>
        <translation>el día de apertura no está claro: escribirlo como 2026-11-02</translation>
    </message>
    <message>
        <source>the grade of what goes in is not said: read it off the container</source>
        <translation>no se dice el tipo de lo que se pone: leerlo en el envase</translation>
    </message>
    <message>
        <source>the machine&apos;s grade is not known: read it off the reservoir&apos;s lid or the manual first</source>
        <translation>no se sabe el tipo del vehículo: leerlo antes en la tapa del depósito o en el manual</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>el retén</translation>
    </message>
    <message>
        <source>the sum is too large to reckon with: %1</source>
        <translation>el importe es demasiado grande para el cálculo: %1</translation>
    </message>
    <message>
        <source>the watch still runs: %1</source>
        <translation>el reloj aún corre: %1</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>thin grease on the axle</source>
        <translation>una capa fina de grasa en el eje</translation>
    </message>
    <message>
        <source>throttle: free play set, and it snaps shut in every place of the bars</source>
        <translation>gas: juego ajustado, y cierra de golpe en toda posición del manillar</translation>
    </message>
    <message>
        <source>throttle: snaps shut by itself at every steering angle</source>
        <translation>gas: cierra solo de golpe en todo giro de dirección</translation>
    </message>
    <message>
        <source>tightened to the torque and read: %1 (%2)</source>
        <translation>apretado al par y leído: %1 (%2)</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>muy justo</translation>
    </message>
    <message>
        <source>top end: no ticking valve, chain tensioner quiet</source>
        <translation>culata: ninguna válvula repiquetea, tensor silencioso</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>llave dinamométrica</translation>
    </message>
    <message>
        <source>torque-wrench-100</source>
        <translation>llave dinamométrica 100</translation>
    </message>
    <message>
        <source>torque-wrench-200</source>
        <translation>llave dinamométrica 200</translation>
    </message>
    <message>
        <source>torque-wrench-25</source>
        <translation>llave dinamométrica 25</translation>
    </message>
    <message>
        <source>torque-wrench-5</source>
        <translation>llave dinamométrica 5</translation>
    </message>
    <message>
        <source>try the brake: it holds, and it lets go</source>
        <translation>probar el freno: sujeta, y suelta</translation>
    </message>
    <message>
        <source>turn signal, front left</source>
        <translation>intermitente delantero izquierdo</translation>
    </message>
    <message>
        <source>turn signal, front right</source>
        <translation>intermitente delantero derecho</translation>
    </message>
    <message>
        <source>turn signal, rear left</source>
        <translation>intermitente trasero izquierdo</translation>
    </message>
    <message>
        <source>turn signal, rear right</source>
        <translation>intermitente trasero derecho</translation>
    </message>
    <message>
        <source>turn signals: all four, at the right rate</source>
        <translation>intermitentes: los cuatro, al ritmo correcto</translation>
    </message>
    <message>
        <source>turn the engine over by hand: it turns freely</source>
        <translation>girar el motor a mano: gira libre</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: no play, no notch, nothing pulls</source>
        <translation>dirección de tope a tope: sin juego, sin muescas, nada tira</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: nothing pulls or pinches</source>
        <translation>dirección de tope a tope: nada tira ni pellizca</translation>
    </message>
    <message>
        <source>turn the wheel: it runs free and true</source>
        <translation>girar la rueda: gira libre y recta</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquesa</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <translation>dos tiempos</translation>
    </message>
    <message>
        <source>tyre-gauge</source>
        <translation>manómetro de neumáticos</translation>
    </message>
    <message>
        <source>tyres hold air</source>
        <translation>los neumáticos guardan el aire</translation>
    </message>
    <message>
        <source>under the seat</source>
        <translation>bajo el asiento</translation>
    </message>
    <message>
        <source>unsafe and open: %1</source>
        <translation>peligro sin resolver: %1</translation>
    </message>
    <message>
        <source>unsafe, and %1 does not want it put right: %2</source>
        <translation>peligro, y %1 no quiere que se repare: %2</translation>
    </message>
    <message>
        <source>valve cover and oil filter cover: dry</source>
        <translation>tapa de válvulas y tapa del filtro de aceite: secas</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volumen</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>espera: %1</translation>
    </message>
    <message>
        <source>wheels and tyres</source>
        <translation>ruedas y neumáticos</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>wiper motor positive input</source>
        <translation>motor del limpiaparabrisas, entrada positiva</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>lado cables</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calculado aquí</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>Pa absolute</source>
        <translation>Pa absolutos</translation>
    </message>
    <message>
        <source>pressure as given: %1 Pa absolute</source>
        <translation>presión como se dio: %1 Pa absolutos</translation>
    </message>
    <message>
        <source>standard pressure at %1 m: %2 Pa</source>
        <translation>presión normal a %1 m: %2 Pa</translation>
    </message>
    <message>
        <source>outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated</source>
        <translation>fuera de 15 a 27 degC o de 600 a 1100 hPa la fórmula CIPM-2007 está extrapolada</translation>
    </message>
    <message>
        <source>hPa absolute</source>
        <translation>hPa absolutos</translation>
    </message>
    <message>
        <source>nothing: ready; a load test proves it</source>
        <translation>nada: lista; lo prueba un ensayo con carga</translation>
    </message>
    <message>
        <source>charge at no more than a tenth of its ampere hours, rest an hour or two, measure again</source>
        <translation>cargar como mucho a un décimo de sus amperios hora, reposar una o dos horas, medir otra vez</translation>
    </message>
    <message>
        <source>charge slowly and check every cell with the hydrometer: cells that differ by more than 0.05 are worn out (common practice, no source)</source>
        <translation>cargar despacio y mirar cada celda con el densímetro: las que difieren más de 0,05 están gastadas (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>charge slowly, rest an hour or two, measure again; if it stays below half charge, renew it (common practice, no source)</source>
        <translation>cargar despacio, reposar una o dos horas, medir otra vez; si queda bajo media carga, cambiarla (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>cannot be read in a sealed AGM battery</source>
        <translation>no se lee en una batería AGM sellada</translation>
    </message>
    <message>
        <source>so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong</source>
        <translation>una tensión tan baja es una celda muerta, una descarga profunda o una tensión nominal equivocada</translation>
    </message>
    <message>
        <source>between the points of the %1 table: %2 %</source>
        <translation>entre los puntos de la tabla %1: %2 %</translation>
    </message>
    <message>
        <source>no charge can be told yet: let it rest an hour or two, measure again</source>
        <translation>aún no se puede decir la carga: dejar reposar una o dos horas, medir otra vez</translation>
    </message>
    <message>
        <source>friction in place of nut_factor, or without it</source>
        <translation>friction en vez de nut_factor, o sin él</translation>
    </message>
    <message>
        <source>proof load %1 N: share %2</source>
        <translation>carga de prueba %1 N: parte %2</translation>
    </message>
    <message>
        <source>held to the limit given: %1 N.m</source>
        <translation>limitado al límite dado: %1 N.m</translation>
    </message>
    <message>
        <source>thread in aluminium: the limit given rules, whatever the bolt could bear</source>
        <translation>rosca en aluminio: manda el límite dado, aguante lo que aguante el tornillo</translation>
    </message>
    <message>
        <source>colourless to amber</source>
        <translation>incoloro a ámbar</translation>
    </message>
    <message>
        <source>glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade</source>
        <translation>los líquidos de glicol DOT 3, DOT 4 y DOT 5.1 se mezclan; el resultado no es mejor que el tipo inferior</translation>
    </message>
    <message>
        <source>not known what is in: do not mix; drain, clean and renew all rubber if in doubt</source>
        <translation>no se sabe qué hay: no mezclar; en la duda vaciar, limpiar y cambiar todas las gomas</translation>
    </message>
    <message>
        <source>%1 and %2 are different families: they attack each other&apos;s rubber and do not mix</source>
        <translation>%1 y %2 son familias distintas: atacan las gomas del otro y no se mezclan</translation>
    </message>
    <message>
        <source>the same kind of fluid</source>
        <translation>la misma clase de líquido</translation>
    </message>
    <message>
        <source>change of family: strip, clean every passage with the right cleaner and renew all rubber, then fill with the new fluid alone</source>
        <translation>cambio de familia: desmontar, limpiar cada conducto con el producto adecuado y cambiar todas las gomas, luego poner solo el líquido nuevo</translation>
    </message>
    <message>
        <source>least boiling points of %1: dry %2, wet %3 degC</source>
        <translation>puntos de ebullición mínimos de %1: seco %2, húmedo %3 degC</translation>
    </message>
    <message>
        <source>the lower grade</source>
        <translation>el tipo inferior</translation>
    </message>
    <message>
        <source>mineral oil has no boiling point in this standard: the maker&apos;s sheet gives it</source>
        <translation>el aceite mineral no tiene punto de ebullición en esta norma: lo da la hoja del fabricante</translation>
    </message>
    <message>
        <source>fuse and connectors between regulator and battery</source>
        <translation>fusible y conectores entre regulador y batería</translation>
    </message>
    <message>
        <source>earth of regulator and engine</source>
        <translation>masa de regulador y motor</translation>
    </message>
    <message>
        <source>brushes and commutator</source>
        <translation>escobillas y colector</translation>
    </message>
    <message>
        <source>cut-out or regulator contacts</source>
        <translation>disyuntor o contactos del regulador</translation>
    </message>
    <message>
        <source>field winding</source>
        <translation>bobinado de campo</translation>
    </message>
    <message>
        <source>connector between alternator and regulator (heat, green copper)</source>
        <translation>conector entre alternador y regulador (calor, cobre verde)</translation>
    </message>
    <message>
        <source>alternator winding open or to earth: measure its AC voltage and resistance</source>
        <translation>bobinado del alternador abierto o a masa: medir su tensión alterna y resistencia</translation>
    </message>
    <message>
        <source>regulator or rectifier</source>
        <translation>regulador o rectificador</translation>
    </message>
    <message>
        <source>voltage drop in leads and earth: measure it with voltage-drop</source>
        <translation>caída de tensión en cables y masa: medirla con Caída de tensión</translation>
    </message>
    <message>
        <source>battery sulphated or with a bad cell: charge it and repeat</source>
        <translation>batería sulfatada o con una celda mala: cargarla y repetir</translation>
    </message>
    <message>
        <source>one phase missing: compare the three AC voltages</source>
        <translation>falta una fase: comparar las tres tensiones alternas</translation>
    </message>
    <message>
        <source>worn brushes, slipping belt or regulator out of adjustment</source>
        <translation>escobillas gastadas, correa que patina o regulador desajustado</translation>
    </message>
    <message>
        <source>alternator winding partly shorted, magnets weak</source>
        <translation>bobinado en parte en corto, imanes débiles</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>como se dio</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>rest %1 V, idle %2 V, revs %3 V: rise %4 V</source>
        <translation>reposo %1 V, ralentí %2 V, régimen %3 V: subida %4 V</translation>
    </message>
    <message>
        <source>battery: it rests as low as with a dead cell; charge and test it, then measure again</source>
        <translation>batería: reposa tan baja como con una celda muerta; cargarla y probarla, luego medir otra vez</translation>
    </message>
    <message>
        <source>it charges, but the battery was low at rest: charge and test it</source>
        <translation>carga, pero la batería estaba baja en reposo: cargarla y probarla</translation>
    </message>
    <message>
        <source>battery: it was low at rest, and an empty one holds the voltage down; charge and test it, then measure again</source>
        <translation>batería: estaba baja en reposo, y una vacía retiene la tensión; cargarla y probarla, luego medir otra vez</translation>
    </message>
    <message>
        <source>regulator, or its earth or sensing lead</source>
        <translation>regulador, o su masa o su cable sensor</translation>
    </message>
    <message>
        <source>battery with an open cell or loose terminal</source>
        <translation>batería con celda abierta o borne flojo</translation>
    </message>
    <message>
        <source>regulator contacts stuck</source>
        <translation>contactos del regulador pegados</translation>
    </message>
    <message>
        <source>overcharging boils the battery and blows bulbs: do not ride on</source>
        <translation>la sobrecarga hierve la batería y funde lámparas: no seguir circulando</translation>
    </message>
    <message>
        <source>at idle the battery still gives: usual for an old alternator with the lamps on, else look at idle speed and lamps (common practice, no source)</source>
        <translation>al ralentí aún da la batería: normal con alternador viejo y luces, si no mirar el ralentí y las lámparas (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>falls with revs: a connection or the regulator fails as current rises; measure again</source>
        <translation>cae con las revoluciones: falla una conexión o el regulador al subir la corriente; medir otra vez</translation>
    </message>
    <message>
        <source>ambient at that altitude: %1 kPa</source>
        <translation>presión ambiente a esa altitud: %1 kPa</translation>
    </message>
    <message>
        <source>%1 times the system: %2 mL to have ready</source>
        <translation>%1 veces el circuito: tener listos %2 mL</translation>
    </message>
    <message>
        <source>this band was read in a summary only: advisory</source>
        <translation>esta banda solo se leyó en un resumen: orientativa</translation>
    </message>
    <message>
        <source>%1 mm from the line; the tape tells %2 mm</source>
        <translation>%1 mm de la línea; la cinta distingue %2 mm</translation>
    </message>
    <message>
        <source>air before %1 kg/m3, after %2 kg/m3: ratio %3</source>
        <translation>aire antes %1 kg/m3, después %2 kg/m3: relación %3</translation>
    </message>
    <message>
        <source>jets numbered by diameter: jet area goes with the root of the density ratio, so the diameter with its fourth root</source>
        <translation>numerados por diámetro: el área va con la raíz de la relación de densidad, y el diámetro con su raíz cuarta</translation>
    </message>
    <message>
        <source>jets numbered by flow: the number goes with the root of the density ratio</source>
        <translation>numerados por caudal: el número va con la raíz de la relación de densidad</translation>
    </message>
    <message>
        <source>tail and stop together</source>
        <translation>trasera y freno juntas</translation>
    </message>
    <message>
        <source>one filament at a time</source>
        <translation>un filamento a la vez</translation>
    </message>
    <message>
        <source>some of these bulbs&apos; watts are from memory: read them on the bulb</source>
        <translation>algunos de estos vatios son de memoria: leerlos en la bombilla</translation>
    </message>
    <message>
        <source>the battery pays the difference: it goes flat while riding</source>
        <translation>la batería paga la diferencia: se descarga al circular</translation>
    </message>
    <message>
        <source>no air was lost: the difference is temperature, or within what the gauge can tell</source>
        <translation>no se perdió aire: la diferencia es temperatura, o lo que el aparato puede distinguir</translation>
    </message>
    <message>
        <source>no loss: the limit is not reached</source>
        <translation>sin pérdida: no se llega al límite</translation>
    </message>
    <message>
        <source>does not fit a date</source>
        <translation>no casa con una fecha</translation>
    </message>
    <message>
        <source>last is a date, this is none</source>
        <translation>last es una fecha, esto no</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>overdue by %1 days</source>
        <translation>vencido hace %1 días</translation>
    </message>
    <message>
        <source>the odometer now, such as 12400 km</source>
        <translation>el cuentakilómetros ahora, por ejemplo 12400 km</translation>
    </message>
    <message>
        <source>calendar: months end on their last day where the day is missing</source>
        <translation>calendario: los meses acaban en su último día si falta el día</translation>
    </message>
    <message>
        <source>fuel to oil from 8 to 200, such as 50, 50:1 or 2 %</source>
        <translation>gasolina a aceite de 8 a 200, por ejemplo 50, 50:1 o 2 %</translation>
    </message>
    <message>
        <source>one or both, from the manual</source>
        <translation>uno o los dos, del manual</translation>
    </message>
    <message>
        <source>uncertainty of the reading at 20 degC: %1 ohm</source>
        <translation>incertidumbre de la lectura a 20 degC: %1 ohm</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 ohm is assumed, 2 % and 0.02 ohm (common practice, no source)</source>
        <translation>sin incertidumbre dada: se supone %1 ohm, 2 % y 0,02 ohm (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>nearest in steps of %1 mm: %2 mm, which leaves %3 mm</source>
        <translation>la más cercana en pasos de %1 mm: %2 mm, que deja %3 mm</translation>
    </message>
    <message>
        <source>it shows less than the true speed: not allowed in most places (from memory of UNECE R39)</source>
        <translation>marca menos que la velocidad real: prohibido en casi todas partes (de memoria, UNECE R39)</translation>
    </message>
    <message>
        <source>empty after %1 days: a battery cannot lose more than all</source>
        <translation>vacía tras %1 días: una batería no puede perder más que todo</translation>
    </message>
    <message>
        <source>stage %1 of %2: %3 %4</source>
        <translation>etapa %1 de %2: %3 %4</translation>
    </message>
    <message>
        <source>across three quarters of the breadth, all round; pattern visible on the rest</source>
        <translation>en tres cuartos del ancho, todo alrededor; en el resto dibujo visible</translation>
    </message>
    <message>
        <source>main grooves in the middle three quarters</source>
        <translation>ranuras principales en los tres cuartos centrales</translation>
    </message>
    <message>
        <source>mopeds, small and light motorcycles</source>
        <translation>ciclomotores y motos ligeras</translation>
    </message>
    <message>
        <source>middle three quarters</source>
        <translation>tres cuartos centrales</translation>
    </message>
    <message>
        <source>treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own</source>
        <translation>testigo de desgaste a 1/32 in: norma de fabricación, no límite en carretera; los estados tienen los suyos</translation>
    </message>
    <message>
        <source>reject below 1/32 in</source>
        <translation>rechazar por debajo de 1/32 in</translation>
    </message>
    <message>
        <source>motorcycle, or another country</source>
        <translation>motorcycle, u otro país</translation>
    </message>
    <message>
        <source>pattern visible</source>
        <translation>dibujo visible</translation>
    </message>
    <message>
        <source>no depth is laid down: look whether every original groove shows</source>
        <translation>sin profundidad prescrita: mirar si se ve cada ranura original</translation>
    </message>
    <message>
        <source>age between %1 and %2 years, limit of the shop %3 years</source>
        <translation>edad entre %1 y %2 años, límite del taller %3 años</translation>
    </message>
    <message>
        <source>three digits: week %1 of a year before 2000 that ends in %2; the decade is not in the code</source>
        <translation>tres cifras: semana %1 de un año anterior a 2000 acabado en %2; la década no está en el código</translation>
    </message>
    <message>
        <source>age is that of the youngest possible year: the tyre may be ten or twenty years older</source>
        <translation>la edad es la del año más reciente posible: el neumático puede tener diez o veinte años más</translation>
    </message>
    <message>
        <source>week %1 of %2: %3 to %4</source>
        <translation>semana %1 de %2: del %3 al %4</translation>
    </message>
    <message>
        <source>no load index and speed symbol in the marking</source>
        <translation>ni índice de carga ni código de velocidad en el marcado</translation>
    </message>
    <message>
        <source>rider and luggage are %1 kg; a pair of these tyres holds %2 kg of machine, rider and luggage together</source>
        <translation>conductor y equipaje pesan %1 kg; un par de estos neumáticos aguanta %2 kg de vehículo, conductor y equipaje</translation>
    </message>
    <message>
        <source>rider and luggage alone are as much as one of these tyres holds, and most of it rests on the rear: look up the machine&apos;s highest load</source>
        <translation>conductor y equipaje solos son tanto como aguanta uno de estos neumáticos, y casi todo va detrás: mirar la carga máxima del vehículo</translation>
    </message>
    <message>
        <source>no check digit in this scheme</source>
        <translation>sin dígito de control en este esquema</translation>
    </message>
    <message>
        <source>no: 17 characters are wanted, %1 were given</source>
        <translation>no: hacen falta 17 caracteres, se dieron %1</translation>
    </message>
    <message>
        <source>accepted as a plain frame number</source>
        <translation>aceptado como simple número de bastidor</translation>
    </message>
    <message>
        <source>%1 characters: not a number of 17</source>
        <translation>%1 caracteres: no es un número de 17</translation>
    </message>
    <message>
        <source>if the plate really shows so many, it is an older scheme without check digit</source>
        <translation>si la placa muestra de verdad tantos, es un esquema antiguo sin dígito de control</translation>
    </message>
    <message>
        <source>no: I, O and Q and signs are never used in a number of 17</source>
        <translation>no: I, O, Q y signos no se usan nunca en un número de 17</translation>
    </message>
    <message>
        <source>no: position 9 should be %1</source>
        <translation>no: la posición 9 debería ser %1</translation>
    </message>
    <message>
        <source>outside North America the check digit is not required: there a failed one is only a hint</source>
        <translation>fuera de Norteamérica el dígito de control no es obligatorio: allí uno malo es solo un indicio</translation>
    </message>
    <message>
        <source>position 10 is no year code; outside North America it often is not</source>
        <translation>la posición 10 no es un código de año; fuera de Norteamérica a menudo no lo es</translation>
    </message>
    <message>
        <source>the year code repeats every 30 years, and is only a hint outside North America</source>
        <translation>el código de año se repite cada 30 años, y fuera de Norteamérica es solo un indicio</translation>
    </message>
    <message>
        <source>starter cable under 0.91 m</source>
        <translation>cable de arranque de menos de 0,91 m</translation>
    </message>
    <message>
        <source>starter cable 0.91 to 1.83 m</source>
        <translation>cable de arranque de 0,91 a 1,83 m</translation>
    </message>
    <message>
        <source>cranking circuit, 0.20 V for each 100 A: give the current</source>
        <translation>circuito de arranque, 0,20 V cada 100 A: dar la corriente</translation>
    </message>
    <message>
        <source>the cranking current in A</source>
        <translation>la corriente de arranque en A</translation>
    </message>
    <message>
        <source>half the 12 V figure at 6 V: common practice, no source</source>
        <translation>la mitad del valor de 12 V a 6 V: práctica común, sin fuente</translation>
    </message>
    <message>
        <source>any drop that the meter can tell from zero is too much: %1</source>
        <translation>toda caída que el aparato distinga de cero es demasiada: %1</translation>
    </message>
    <message>
        <source>the service limit of the manual</source>
        <translation>el límite de servicio del manual</translation>
    </message>
    <message>
        <source>%1 mm and more</source>
        <translation>%1 mm y más</translation>
    </message>
    <message>
        <source>worn %1 mm in %2 km; %3 mm left: %4 km</source>
        <translation>gastado %1 mm en %2 km; quedan %3 mm: %4 km</translation>
    </message>
    <message>
        <source>no wear was measured: what remains cannot be told</source>
        <translation>no se midió desgaste: no se puede decir lo que queda</translation>
    </message>
    <message>
        <source>tan (light brown)</source>
        <translation>marrón claro</translation>
    </message>
    <message>
        <source>clear or white</source>
        <translation>transparente o blanco</translation>
    </message>
    <message>
        <source>resistance %1 mohm/m (%2) at %3 degC: %4 mohm/m</source>
        <translation>resistencia %1 mohm/m (%2) a %3 degC: %4 mohm/m</translation>
    </message>
    <message>
        <source>solid copper, ASTM B258 size</source>
        <translation>cobre macizo, calibre ASTM B258</translation>
    </message>
    <message>
        <source>by area, from IEC 60228 class 5</source>
        <translation>por sección, de IEC 60228 clase 5</translation>
    </message>
    <message>
        <source>the load wants a fuse of %1 A, more than this wire may stand behind (%2 A): take a thicker wire</source>
        <translation>la carga pide un fusible de %1 A, más de lo que este cable admite (%2 A): coger un cable más grueso</translation>
    </message>
    <message>
        <source>fuse: the next blade size from 1.25 x %1 A: %2 A; the wire may stand behind %3 A</source>
        <translation>fusible: la siguiente medida de cuchilla desde 1.25 x %1 A: %2 A; el cable admite %3 A</translation>
    </message>
    <message>
        <source>no blade fuse is large enough: such currents belong to the starter circuit</source>
        <translation>ningún fusible de cuchilla basta: esas corrientes son del circuito de arranque</translation>
    </message>
    <message>
        <source>this wire may stand behind %1 A at most: take a thicker wire</source>
        <translation>este cable admite como mucho %1 A: coger un cable más grueso</translation>
    </message>
    <message>
        <source>yes: %1</source>
        <translation>sí: %1</translation>
    </message>
    <message>
        <source>no: %1</source>
        <translation>no: %1</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>vencido por %1</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 is assumed for an ordinary instrument (common practice, no source)</source>
        <translation>sin incertidumbre dada: se supone %1 para un instrumento corriente (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>no verdict: %1</source>
        <translation>sin veredicto: %1</translation>
    </message>
    <message>
        <source>what would settle it: %1</source>
        <translation>qué lo aclararía: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>límite: %1</translation>
    </message>
    <message>
        <source>load index %1 is outside the table of 30 to 80: look it up in the maker&apos;s book</source>
        <translation>el índice de carga %1 está fuera de la tabla de 30 a 80: mirarlo en el libro del fabricante</translation>
    </message>
    <message>
        <source>speed symbol %1 has no fixed speed in the table</source>
        <translation>el código de velocidad %1 no tiene velocidad fija en la tabla</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>dejar</translation>
    </message>
    <message>
        <source>down</source>
        <translation>más bajo</translation>
    </message>
    <message>
        <source>up</source>
        <translation>más alto</translation>
    </message>
    <message>
        <source>would be more vapour than the whole pressure</source>
        <translation>sería más vapor que toda la presión</translation>
    </message>
    <message>
        <source>a higher pressure or a lower temperature</source>
        <translation>una presión más alta o una temperatura más baja</translation>
    </message>
    <message>
        <source>stands beside a specific gravity: give one of them</source>
        <translation>está junto a una densidad: dar una de las dos</translation>
    </message>
    <message>
        <source>is missing, and so is specific_gravity</source>
        <translation>falta, y specific_gravity también</translation>
    </message>
    <message>
        <source>one of voltage and specific_gravity</source>
        <translation>uno de voltage y specific_gravity</translation>
    </message>
    <message>
        <source>is more than a battery at rest shows</source>
        <translation>es más de lo que muestra una batería en reposo</translation>
    </message>
    <message>
        <source>up to 8 V for a 6 V battery</source>
        <translation>hasta 8 V en una batería de 6 V</translation>
    </message>
    <message>
        <source>up to 16 V for a 12 V battery</source>
        <translation>hasta 16 V en una batería de 12 V</translation>
    </message>
    <message>
        <source>a 6 V battery has half the voltage of the table: %1 V counts as %2 V</source>
        <translation>una batería de 6 V tiene la mitad de la tensión de la tabla: %1 V cuentan como %2 V</translation>
    </message>
    <message>
        <source>above 13 V it is charging or has not rested: wait an hour or two after charging, then measure again</source>
        <translation>por encima de 13 V está cargando o no ha reposado: esperar una o dos horas tras la carga y medir otra vez</translation>
    </message>
    <message>
        <source>is not a thread that is known here</source>
        <translation>no es una rosca conocida aquí</translation>
    </message>
    <message>
        <source>is not a property class of ISO 898-1</source>
        <translation>no es una clase de ISO 898-1</translation>
    </message>
    <message>
        <source>stands beside a nut_factor: they are two ways to say one thing</source>
        <translation>está junto a un nut_factor: dicen lo mismo</translation>
    </message>
    <message>
        <source>is missing, and so is friction</source>
        <translation>falta, y friction también</translation>
    </message>
    <message>
        <source>one of nut_factor (0.05 to 0.6) and friction (0.03 to 0.6)</source>
        <translation>uno de nut_factor (0,05 a 0,6) y friction (0,03 a 0,6)</translation>
    </message>
    <message>
        <source>has no part in a sum with nut_factor, which covers all friction</source>
        <translation>no cabe en una cuenta con nut_factor, que cubre todo rozamiento</translation>
    </message>
    <message>
        <source>is not known for this thread</source>
        <translation>no se conoce para esta rosca</translation>
    </message>
    <message>
        <source>give it in mm</source>
        <translation>darlo en mm</translation>
    </message>
    <message>
        <source>would stretch this bolt past its proof load of %1 N</source>
        <translation>estiraría este tornillo más allá de su carga de prueba de %1 N</translation>
    </message>
    <message>
        <source>up to %1 N.m with this friction</source>
        <translation>hasta %1 N.m con este rozamiento</translation>
    </message>
    <message>
        <source>means that the thread strips before the bolt yields: a reduced limit is needed and is not guessed</source>
        <translation>significa que la rosca se arranca antes de que ceda el tornillo: hace falta un límite menor y no se adivina</translation>
    </message>
    <message>
        <source>give torque_limit, the figure of the manual for this thread</source>
        <translation>dar torque_limit, el valor del manual para esta rosca</translation>
    </message>
    <message>
        <source>is not a grade that is known here</source>
        <translation>no es un tipo conocido aquí</translation>
    </message>
    <message>
        <source>an old single-phase alternator gives about 13.5 V at best</source>
        <translation>un alternador monofásico viejo da como mucho unos 13,5 V</translation>
    </message>
    <message>
        <source>a three-phase alternator gives about 14.5 V</source>
        <translation>un alternador trifásico da unos 14,5 V</translation>
    </message>
    <message>
        <source>a dynamo with a good regulator gives about 14 V</source>
        <translation>una dinamo con buen regulador da unos 14 V</translation>
    </message>
    <message>
        <source>more lamps or larger bulbs than the generator feeds: see lamp-budget</source>
        <translation>más lámparas o mayores de lo que alimenta el generador: ver Lámparas y generador</translation>
    </message>
    <message>
        <source>up to %1 V</source>
        <translation>hasta %1 V</translation>
    </message>
    <message>
        <source>is not below limit_high</source>
        <translation>no está por debajo de limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures</source>
        <translation>los dos valores del manual</translation>
    </message>
    <message>
        <source>is not less than the stroke</source>
        <translation>no es menor que la carrera</translation>
    </message>
    <message>
        <source>0 to %1 mm</source>
        <translation>0 a %1 mm</translation>
    </message>
    <message>
        <source>from exhaust closing only %1 cm3 are compressed</source>
        <translation>desde el cierre del escape solo se comprimen %1 cm3</translation>
    </message>
    <message>
        <source>has an ambiguous unit</source>
        <translation>tiene una unidad ambigua</translation>
    </message>
    <message>
        <source>is ambiguous</source>
        <translation>es ambiguo</translation>
    </message>
    <message>
        <source>has no unit</source>
        <translation>no tiene unidad</translation>
    </message>
    <message>
        <source>has a unit that is not known here</source>
        <translation>tiene una unidad desconocida aquí</translation>
    </message>
    <message>
        <source>is not a unit that is known here</source>
        <translation>no es una unidad conocida aquí</translation>
    </message>
    <message>
        <source>must be above zero for a consumption</source>
        <translation>debe ser mayor que cero para un consumo</translation>
    </message>
    <message>
        <source>such as 60 mpg(imp)</source>
        <translation>por ejemplo 60 mpg(imp)</translation>
    </message>
    <message>
        <source>must not be zero for a consumption</source>
        <translation>no puede ser cero para un consumo</translation>
    </message>
    <message>
        <source>such as 3.5 L/100km</source>
        <translation>por ejemplo 3.5 L/100km</translation>
    </message>
    <message>
        <source>must be above zero for a wire</source>
        <translation>debe ser mayor que cero para un cable</translation>
    </message>
    <message>
        <source>such as 0.75 mm2</source>
        <translation>por ejemplo 0.75 mm2</translation>
    </message>
    <message>
        <source>is below absolute zero</source>
        <translation>está bajo el cero absoluto</translation>
    </message>
    <message>
        <source>-273.15 degC and more</source>
        <translation>-273,15 degC y más</translation>
    </message>
    <message>
        <source>an absolute pressure cannot be negative</source>
        <translation>una presión absoluta no puede ser negativa</translation>
    </message>
    <message>
        <source>0 and more</source>
        <translation>0 y más</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>una fecha como 2026-11-25</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>is out of range</source>
        <translation>está fuera de rango</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>no es una de las opciones</translation>
    </message>
    <message>
        <source>is so long that the beam would reach the ground first</source>
        <translation>es tan larga que el haz tocaría antes el suelo</translation>
    </message>
    <message>
        <source>up to %1 m for this lamp height</source>
        <translation>hasta %1 m para esta altura del faro</translation>
    </message>
    <message>
        <source>is not below the first pressure</source>
        <translation>no está bajo la primera presión</translation>
    </message>
    <message>
        <source>below %1 kPa gauge</source>
        <translation>por debajo de %1 kPa gauge</translation>
    </message>
    <message>
        <source>from the second reading down to %1 kPa: %2 days</source>
        <translation>de la segunda lectura hasta %1 kPa: %2 días</translation>
    </message>
    <message>
        <source>a time such as 6 months, 1 year or 90 days</source>
        <translation>un tiempo como 6 months, 1 year o 90 days</translation>
    </message>
    <message>
        <source>a whole number of months or years</source>
        <translation>un número entero de meses o años</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>a distance such as 3000 km</source>
        <translation>una distancia como 3000 km</translation>
    </message>
    <message>
        <source>above 0 km</source>
        <translation>más de 0 km</translation>
    </message>
    <message>
        <source>0 to 10000000 km</source>
        <translation>0 a 10000000 km</translation>
    </message>
    <message>
        <source>is no mixture for a two-stroke</source>
        <translation>no es una mezcla para un dos tiempos</translation>
    </message>
    <message>
        <source>is missing, and so is limit_low</source>
        <translation>falta, y limit_low también</translation>
    </message>
    <message>
        <source>a connection is not corrected for temperature</source>
        <translation>una conexión no se corrige por temperatura</translation>
    </message>
    <message>
        <source>is above limit_high</source>
        <translation>está sobre limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures, the smaller first</source>
        <translation>los dos valores del manual, el menor primero</translation>
    </message>
    <message>
        <source>is too thin for that clearance: nothing would be left of the new one</source>
        <translation>es demasiado fina para ese juego: de la nueva no quedaría nada</translation>
    </message>
    <message>
        <source>check the three figures; the valve may not seat</source>
        <translation>revisar los tres valores; quizá la válvula no asienta</translation>
    </message>
    <message>
        <source>stands beside a true distance: give one of them</source>
        <translation>está junto a una distancia real: dar una de las dos</translation>
    </message>
    <message>
        <source>is missing, and so is true_distance</source>
        <translation>falta, y true_distance también</translation>
    </message>
    <message>
        <source>one of true_distance and true_speed</source>
        <translation>uno de true_distance y true_speed</translation>
    </message>
    <message>
        <source>a distance, such as 10.4 km</source>
        <translation>una distancia, por ejemplo 10.4 km</translation>
    </message>
    <message>
        <source>a speed, such as 52 km/h</source>
        <translation>una velocidad, por ejemplo 52 km/h</translation>
    </message>
    <message>
        <source>0 to 1000000 km</source>
        <translation>0 a 1000000 km</translation>
    </message>
    <message>
        <source>0 to 400 km/h</source>
        <translation>0 a 400 km/h</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>debe ser un número entero</translation>
    </message>
    <message>
        <source>1, 2, 3 and so on</source>
        <translation>1, 2, 3 y así</translation>
    </message>
    <message>
        <source>is not longer than half the stroke</source>
        <translation>no es más larga que media carrera</translation>
    </message>
    <message>
        <source>more than %1 mm; about twice the stroke is usual</source>
        <translation>más de %1 mm; lo normal es el doble de la carrera</translation>
    </message>
    <message>
        <source>stands beside a travel: give one of them</source>
        <translation>está junto a un recorrido: dar uno de los dos</translation>
    </message>
    <message>
        <source>is missing, and so is travel</source>
        <translation>falta, y travel también</translation>
    </message>
    <message>
        <source>one of degrees and travel</source>
        <translation>uno de degrees y travel</translation>
    </message>
    <message>
        <source>is more than the stroke</source>
        <translation>es más que la carrera</translation>
    </message>
    <message>
        <source>turned back so far the adapter leaves no arm</source>
        <translation>tan girado hacia atrás el adaptador no deja brazo</translation>
    </message>
    <message>
        <source>an adapter shorter than %1 mm, or another angle</source>
        <translation>un adaptador de menos de %1 mm, u otro ángulo</translation>
    </message>
    <message>
        <source>up to 50 cc: every original groove must show</source>
        <translation>hasta 50 cc: cada ranura original debe verse</translation>
    </message>
    <message>
        <source>is not a date code</source>
        <translation>no es un código de fecha</translation>
    </message>
    <message>
        <source>names week %1, which does not exist</source>
        <translation>nombra la semana %1, que no existe</translation>
    </message>
    <message>
        <source>lies in the future: week %1 of %2 began on %3</source>
        <translation>está en el futuro: la semana %1 de %2 empezó el %3</translation>
    </message>
    <message>
        <source>a week 53 is rare: read the code again</source>
        <translation>una semana 53 es rara: leer otra vez el código</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J, 120/70 R 12 58P or 3.50-10 59J</source>
        <translation>por ejemplo 100/90-10 56J, 120/70 R 12 58P o 3.50-10 59J</translation>
    </message>
    <message>
        <source>is too long for a tyre marking</source>
        <translation>es demasiado largo para un marcado de neumático</translation>
    </message>
    <message>
        <source>is not a marking that is read here</source>
        <translation>no es un marcado que se lea aquí</translation>
    </message>
    <message>
        <source>has a width, aspect or rim beyond motorcycle tyres</source>
        <translation>tiene ancho, relación o llanta fuera de neumáticos de moto</translation>
    </message>
    <message>
        <source>an inch marking names no height: it is taken as equal to the width (common practice, no source)</source>
        <translation>un marcado en pulgadas no dice la altura: se toma igual al ancho (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>would end below the ambient pressure: the tyre is flat there</source>
        <translation>acabaría bajo la presión ambiente: allí el neumático está desinflado</translation>
    </message>
    <message>
        <source>a higher pressure at the start</source>
        <translation>una presión inicial más alta</translation>
    </message>
    <message>
        <source>is no frame number</source>
        <translation>no es un número de bastidor</translation>
    </message>
    <message>
        <source>17 characters, or an older number as stamped</source>
        <translation>17 caracteres, o un número antiguo como grabado</translation>
    </message>
    <message>
        <source>read it again: 1 for I, 0 for O and Q</source>
        <translation>leerlo otra vez: 1 por I, 0 por O y Q</translation>
    </message>
    <message>
        <source>a right check digit does not prove the number: letters and digits share values</source>
        <translation>un dígito de control correcto no prueba el número: letras y cifras comparten valores</translation>
    </message>
    <message>
        <source>is needed: this limit is 0.20 V for each 100 A</source>
        <translation>hace falta: este límite es 0,20 V cada 100 A</translation>
    </message>
    <message>
        <source>is the same as new: nothing could wear</source>
        <translation>es igual que nuevo: nada podría gastarse</translation>
    </message>
    <message>
        <source>is better than new</source>
        <translation>es mejor que nuevo</translation>
    </message>
    <message>
        <source>up to %1 mm</source>
        <translation>hasta %1 mm</translation>
    </message>
    <message>
        <source>stands beside a power: give one of them</source>
        <translation>está junto a una potencia: dar una de las dos</translation>
    </message>
    <message>
        <source>is missing, and so is power</source>
        <translation>falta, y power también</translation>
    </message>
    <message>
        <source>one of current and power</source>
        <translation>uno de current y power</translation>
    </message>
    <message>
        <source>0.03 to 100 mm2, or 32 to 1 AWG</source>
        <translation>0.03 a 100 mm2, o 32 a 1 AWG</translation>
    </message>
    <message>
        <source>would lose %1 V of %2 V in the wire</source>
        <translation>perdería %1 V de %2 V en el cable</translation>
    </message>
    <message>
        <source>a thicker wire, a shorter one or a smaller load</source>
        <translation>un cable más grueso, más corto o menos carga</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>above %1 up to %2</source>
        <translation>más de %1 hasta %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de %1</translation>
    </message>
    <message>
        <source>is missing (%1)</source>
        <translation>falta (%1)</translation>
    </message>
    <message>
        <source>%1, a fine pitch written as M10x1.25</source>
        <translation>%1, un paso fino escrito como M10x1.25</translation>
    </message>
    <message>
        <source>a pitch from 0.2 to %1 mm (the coarse one)</source>
        <translation>un paso de 0.2 a %1 mm (el grueso)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither a bulb type nor a power</source>
        <translation>&quot;%1&quot; no es ni tipo de bombilla ni potencia</translation>
    </message>
    <message>
        <source>watts such as 5 W or 35/35 W, or one of %1; &quot;2 x P21W&quot; for two</source>
        <translation>vatios como 5 W o 35/35 W, o uno de %1; &quot;2 x P21W&quot; para dos</translation>
    </message>
    <message>
        <source>has no rule on file for %1</source>
        <translation>no tiene norma guardada para %1</translation>
    </message>
    <message>
        <source>weeks 01 to 53; %1</source>
        <translation>semanas 01 a 53; %1</translation>
    </message>
    <message>
        <source>a code up to today, %1</source>
        <translation>un código hasta hoy, %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>specific gravity at 26.7 degC: %1 + 0.004 x (%2 F - 80)/10 = %3</source>
        <translation>densidad a 26,7 degC: %1 + 0,004 x (%2 F - 80)/10 = %3</translation>
    </message>
    <message>
        <source>K = %1 as given</source>
        <translation>K = %1 como se dio</translation>
    </message>
    <message>
        <source>preload F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</source>
        <translation>precarga F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</translation>
    </message>
    <message>
        <source>stress area As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in the table</source>
        <translation>sección resistente As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 en la tabla</translation>
    </message>
    <message>
        <source>preload F = %1 x %2 MPa x %3 mm2 = %4 N</source>
        <translation>precarga F = %1 x %2 MPa x %3 mm2 = %4 N</translation>
    </message>
    <message>
        <source>torque T = K d F = %1 x %2 mm x %3 N = %4 N.m</source>
        <translation>par T = K d F = %1 x %2 mm x %3 N = %4 N.m</translation>
    </message>
    <message>
        <source>swept volume = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</source>
        <translation>cilindrada = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</translation>
    </message>
    <message>
        <source>ratio = (%1 + %2)/%3 = %4</source>
        <translation>relación = (%1 + %2)/%3 = %4</translation>
    </message>
    <message>
        <source>line = pi/4 x (%1 mm)^2 x %2 m = %3 mL</source>
        <translation>conducto = pi/4 x (%1 mm)^2 x %2 m = %3 mL</translation>
    </message>
    <message>
        <source>system = %1 + %2 + %3 = %4 mL</source>
        <translation>circuito = %1 + %2 + %3 = %4 mL</translation>
    </message>
    <message>
        <source>speed = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</source>
        <translation>velocidad = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</translation>
    </message>
    <message>
        <source>mean piston speed = S n/30000 = %1 m/s</source>
        <translation>velocidad media del pistón = S n/30000 = %1 m/s</translation>
    </message>
    <message>
        <source>drop = per cent/100 x distance = %1 to %2 mm</source>
        <translation>caída = por ciento/100 x distancia = %1 a %2 mm</translation>
    </message>
    <message>
        <source>jet = %1 x ratio^%2 = %3</source>
        <translation>chiclé = %1 x relación^%2 = %3</translation>
    </message>
    <message>
        <source>spare = %1 W - %2 W = %3 W</source>
        <translation>sobra = %1 W - %2 W = %3 W</translation>
    </message>
    <message>
        <source>second reading at the first temperature: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</source>
        <translation>segunda lectura a la primera temperatura: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</translation>
    </message>
    <message>
        <source>lost: %1 kPa in %2 days = %3 kPa a day</source>
        <translation>perdido: %1 kPa en %2 días = %3 kPa al día</translation>
    </message>
    <message>
        <source>%1 + %2 = %3; from %4 that is %5 days</source>
        <translation>%1 + %2 = %3; desde el %4 son %5 días</translation>
    </message>
    <message>
        <source>%1 + %2 = %3 km; now %4 km: %5 km left</source>
        <translation>%1 + %2 = %3 km; ahora %4 km: quedan %5 km</translation>
    </message>
    <message>
        <source>oil = finished mix/(ratio + 1) = %1 L/(%2 + 1) = %3 mL</source>
        <translation>aceite = mezcla hecha/(relación + 1) = %1 L/(%2 + 1) = %3 mL</translation>
    </message>
    <message>
        <source>oil = fuel/ratio = %1 L/%2 = %3 mL</source>
        <translation>aceite = gasolina/relación = %1 L/%2 = %3 mL</translation>
    </message>
    <message>
        <source>at 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</source>
        <translation>a 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</translation>
    </message>
    <message>
        <source>new shim = %1 + %2 - %3 = %4 mm</source>
        <translation>pastilla nueva = %1 + %2 - %3 = %4 mm</translation>
    </message>
    <message>
        <source>error = (shown - true)/true = (%1 - %2)/%3 = %4 %</source>
        <translation>error = (marcado - real)/real = (%1 - %2)/%3 = %4 %</translation>
    </message>
    <message>
        <source>charge = %1 A x %2 h = %3 Ah of %4 Ah: %5 %</source>
        <translation>carga = %1 A x %2 h = %3 Ah de %4 Ah: %5 %</translation>
    </message>
    <message>
        <source>arc = pi D a/360 = %1 mm; chord = D sin(a/2) = %2 mm</source>
        <translation>arco = pi D a/360 = %1 mm; cuerda = D sin(a/2) = %2 mm</translation>
    </message>
    <message>
        <source>setting = torque x L/(L + E cos a) = %1 N.m x %2</source>
        <translation>ajuste = par x L/(L + E cos a) = %1 N.m x %2</translation>
    </message>
    <message>
        <source>diameter = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</source>
        <translation>diámetro = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</translation>
    </message>
    <message>
        <source>absolute before: %1 + %2 = %3 kPa</source>
        <translation>absoluta antes: %1 + %2 = %3 kPa</translation>
    </message>
    <message>
        <source>absolute after: x (%1 K / %2 K) = %3 kPa</source>
        <translation>absoluta después: x (%1 K / %2 K) = %3 kPa</translation>
    </message>
    <message>
        <source>gauge after: less ambient %1 kPa = %2 kPa</source>
        <translation>manométrica después: menos ambiente %1 kPa = %2 kPa</translation>
    </message>
    <message>
        <source>sum of value x weight = %1, mod 11 = %2: check digit %3, position 9 shows %4</source>
        <translation>suma de valor x peso = %1, mod 11 = %2: dígito de control %3, la posición 9 muestra %4</translation>
    </message>
    <message>
        <source>resistance = %1 V/%2 A = %3 ohm</source>
        <translation>resistencia = %1 V/%2 A = %3 ohm</translation>
    </message>
    <message>
        <source>current = %1 W/%2 V = %3 A</source>
        <translation>corriente = %1 W/%2 V = %3 A</translation>
    </message>
    <message>
        <source>drop = I R L = %1 A x %2 mohm/m x %3 m = %4 V</source>
        <translation>caída = I R L = %1 A x %2 mohm/m x %3 m = %4 V</translation>
    </message>
    <message>
        <source>0 straight ahead, 90 square, 180 turned back</source>
        <translation>0 recto, 90 en escuadra, 180 hacia atrás</translation>
    </message>
    <message>
        <source>2 where the return is a wire as well</source>
        <translation>2 donde el retorno también es un cable</translation>
    </message>
    <message>
        <source>6 months, 1 year, 90 days or 3000 km</source>
        <translation>6 months, 1 year, 90 days o 3000 km</translation>
    </message>
    <message>
        <source>A starting point for the main jet at another height or temperature.</source>
        <translation>Un punto de partida para el chiclé principal a otra altitud o temperatura.</translation>
    </message>
    <message>
        <source>A torque for a bolt of known thread and class where the manual gives none.</source>
        <translation>Un par para un tornillo de rosca y clase conocidas donde el manual no da ninguno.</translation>
    </message>
    <message>
        <source>A winding&apos;s resistance brought to 20 degC and held against its limits; an earth or a continuity as it is.</source>
        <translation>La resistencia de un bobinado llevada a 20 degC y comparada con sus límites; una masa o continuidad tal cual.</translation>
    </message>
    <message>
        <source>AGM, sealed</source>
        <translation>AGM, sellada</translation>
    </message>
    <message>
        <source>Adapter length E</source>
        <translation>Longitud del adaptador E</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Age limit of the shop</source>
        <translation>Límite de edad del taller</translation>
    </message>
    <message>
        <source>Age of a tyre</source>
        <translation>Edad de un neumático</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Altitude now</source>
        <translation>Altitud actual</translation>
    </message>
    <message>
        <source>Altitude then</source>
        <translation>Altitud entonces</translation>
    </message>
    <message>
        <source>Altitude there</source>
        <translation>Altitud allí</translation>
    </message>
    <message>
        <source>Angle a</source>
        <translation>Ángulo a</translation>
    </message>
    <message>
        <source>Arc on the flywheel</source>
        <translation>Arco en el volante</translation>
    </message>
    <message>
        <source>Assumption</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>At idle</source>
        <translation>Al ralentí</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>En reposo</translation>
    </message>
    <message>
        <source>At revs</source>
        <translation>Con revoluciones</translation>
    </message>
    <message>
        <source>At sea level</source>
        <translation>Al nivel del mar</translation>
    </message>
    <message>
        <source>Austria</source>
        <translation>Austria</translation>
    </message>
    <message>
        <source>Battery voltage at rest, at idle and at revs: whether the charging system works and what to look at.</source>
        <translation>Tensión de la batería en reposo, al ralentí y con revoluciones: si la carga funciona y dónde mirar.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Bore of line</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Brake fluid</source>
        <translation>Líquido de frenos</translation>
    </message>
    <message>
        <source>Caliper or cylinder</source>
        <translation>Pinza o bombín</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacidad</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Charge lost</source>
        <translation>Carga perdida</translation>
    </message>
    <message>
        <source>Charge of a battery</source>
        <translation>Carga de la batería</translation>
    </message>
    <message>
        <source>Check digit</source>
        <translation>Dígito de control</translation>
    </message>
    <message>
        <source>Chord on the flywheel</source>
        <translation>Cuerda en el volante</translation>
    </message>
    <message>
        <source>Circumference</source>
        <translation>Circunferencia</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Clearance measured</source>
        <translation>Juego medido</translation>
    </message>
    <message>
        <source>Clearance wanted</source>
        <translation>Juego deseado</translation>
    </message>
    <message>
        <source>Clearance with the nearest</source>
        <translation>Juego con la más cercana</translation>
    </message>
    <message>
        <source>Coefficient of friction</source>
        <translation>Coeficiente de rozamiento</translation>
    </message>
    <message>
        <source>Colour of the fuse</source>
        <translation>Color del fusible</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Compression reading and altitude</source>
        <translation>Compresión y altitud</translation>
    </message>
    <message>
        <source>Conductors</source>
        <translation>Conductores</translation>
    </message>
    <message>
        <source>Connecting rod</source>
        <translation>Biela</translation>
    </message>
    <message>
        <source>Content of the system</source>
        <translation>Contenido del circuito</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Convertir una unidad</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>País</translation>
    </message>
    <message>
        <source>Crank angle</source>
        <translation>Ángulo del cigüeñal</translation>
    </message>
    <message>
        <source>Crank angle to piston travel and back, and the mark on the flywheel.</source>
        <translation>Del ángulo del cigüeñal al recorrido del pistón y al revés, y la marca en el volante.</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Current of the load</source>
        <translation>Corriente de la carga</translation>
    </message>
    <message>
        <source>Current, voltage drop and fuse for a load at the end of a wire.</source>
        <translation>Corriente, caída de tensión y fusible para una carga al final de un cable.</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1 or mineral</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1 o mineral</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral or unknown</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral o unknown</translation>
    </message>
    <message>
        <source>DOT 5 (silicone) and DOT 5.1 (glycol) sound alike and never mix</source>
        <translation>DOT 5 (silicona) y DOT 5.1 (glicol) suenan igual y nunca se mezclan</translation>
    </message>
    <message>
        <source>Date code</source>
        <translation>Código de fecha</translation>
    </message>
    <message>
        <source>Days standing</source>
        <translation>Días parado</translation>
    </message>
    <message>
        <source>Days to the limit</source>
        <translation>Días hasta el límite</translation>
    </message>
    <message>
        <source>Days until the limit</source>
        <translation>Días hasta el límite</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Density altitude</source>
        <translation>Altitud de densidad</translation>
    </message>
    <message>
        <source>Density of the air</source>
        <translation>Densidad del aire</translation>
    </message>
    <message>
        <source>Density ratio</source>
        <translation>Relación de densidad</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Displacement of one cylinder</source>
        <translation>Cilindrada unitaria</translation>
    </message>
    <message>
        <source>Distance so far</source>
        <translation>Distancia hasta ahora</translation>
    </message>
    <message>
        <source>Distance to the wall</source>
        <translation>Distancia a la pared</translation>
    </message>
    <message>
        <source>Does it charge?</source>
        <translation>¿Carga?</translation>
    </message>
    <message>
        <source>Drain while standing</source>
        <translation>Descarga en parado</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Caída</translation>
    </message>
    <message>
        <source>Drop measured</source>
        <translation>Caída medida</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Toca</translation>
    </message>
    <message>
        <source>Engine speed</source>
        <translation>Régimen del motor</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Error</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Cada</translation>
    </message>
    <message>
        <source>Exhaust port</source>
        <translation>Lumbrera de escape</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Factor</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Par final</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Mezcla hecha</translation>
    </message>
    <message>
        <source>First pressure</source>
        <translation>Primera presión</translation>
    </message>
    <message>
        <source>First temperature</source>
        <translation>Primera temperatura</translation>
    </message>
    <message>
        <source>Fluid for a flush</source>
        <translation>Líquido para el purgado</translation>
    </message>
    <message>
        <source>Flywheel diameter</source>
        <translation>Diámetro del volante</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Número de bastidor</translation>
    </message>
    <message>
        <source>Friction under the head</source>
        <translation>Rozamiento bajo la cabeza</translation>
    </message>
    <message>
        <source>From bore, stroke and the volume of the chamber.</source>
        <translation>De diámetro, carrera y volumen de la cámara.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Gasolina</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Fusible</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Generador</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Alemania</translation>
    </message>
    <message>
        <source>Greatest angle</source>
        <translation>Ángulo máximo</translation>
    </message>
    <message>
        <source>Greatest drop</source>
        <translation>Caída máxima</translation>
    </message>
    <message>
        <source>H4 (P43t) and HS1 (PX43t) are not alike: do not swap them</source>
        <translation>H4 (P43t) y HS1 (PX43t) no son iguales: no cambiarlas</translation>
    </message>
    <message>
        <source>Headlamp aim</source>
        <translation>Reglaje del faro</translation>
    </message>
    <message>
        <source>Height of the lamp</source>
        <translation>Altura del faro</translation>
    </message>
    <message>
        <source>How far speedometer or odometer are out.</source>
        <translation>Cuánto se equivocan velocímetro o cuentakilómetros.</translation>
    </message>
    <message>
        <source>How fast a tyre or a crankcase loses air, with the temperature taken out.</source>
        <translation>Con qué rapidez pierde aire un neumático o un cárter, quitada la temperatura.</translation>
    </message>
    <message>
        <source>How full a lead-acid battery is, from its rested voltage or its acid.</source>
        <translation>Cuánta carga tiene una batería de plomo, por su tensión en reposo o su ácido.</translation>
    </message>
    <message>
        <source>How much air there is for the engine to breathe.</source>
        <translation>Cuánto aire tiene el motor para respirar.</translation>
    </message>
    <message>
        <source>How much brake or clutch fluid to have ready before the circuit is opened.</source>
        <translation>Cuánto líquido de frenos o embrague tener listo antes de abrir el circuito.</translation>
    </message>
    <message>
        <source>How much of the battery a standing current takes until the next ride.</source>
        <translation>Cuánta batería toma una corriente en reposo hasta la próxima salida.</translation>
    </message>
    <message>
        <source>How much oil goes into the fuel.</source>
        <translation>Cuánto aceite va en la gasolina.</translation>
    </message>
    <message>
        <source>Ignition timing</source>
        <translation>Avance del encendido</translation>
    </message>
    <message>
        <source>In the machine</source>
        <translation>En el vehículo</translation>
    </message>
    <message>
        <source>In which order and stages to tighten several bolts of one joint.</source>
        <translation>En qué orden y etapas apretar varios tornillos de una unión.</translation>
    </message>
    <message>
        <source>Jet</source>
        <translation>Chiclé</translation>
    </message>
    <message>
        <source>Jet now</source>
        <translation>Chiclé actual</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lámparas</translation>
    </message>
    <message>
        <source>Lamps and generator</source>
        <translation>Lámparas y generador</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Hecho por última vez</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Ley</translation>
    </message>
    <message>
        <source>Least angle</source>
        <translation>Ángulo mínimo</translation>
    </message>
    <message>
        <source>Least drop</source>
        <translation>Caída mínima</translation>
    </message>
    <message>
        <source>Least dry boiling point</source>
        <translation>Ebullición mínima en seco</translation>
    </message>
    <message>
        <source>Least wet boiling point</source>
        <translation>Ebullición mínima en húmedo</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Length of line</source>
        <translation>Longitud del conducto</translation>
    </message>
    <message>
        <source>Length of wire</source>
        <translation>Longitud del cable</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Limit of the manual</source>
        <translation>Límite del manual</translation>
    </message>
    <message>
        <source>Limit of the thread</source>
        <translation>Límite de la rosca</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Pérdida</translation>
    </message>
    <message>
        <source>Loss of pressure</source>
        <translation>Pérdida de presión</translation>
    </message>
    <message>
        <source>Loss per day</source>
        <translation>Pérdida al día</translation>
    </message>
    <message>
        <source>Loss that is allowed</source>
        <translation>Pérdida admitida</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Lower limit of the manual</source>
        <translation>Límite inferior del manual</translation>
    </message>
    <message>
        <source>Lowest allowed</source>
        <translation>Mínimo admitido</translation>
    </message>
    <message>
        <source>M3 to M16, property classes 4.6 to 12.9 of ISO 898-1</source>
        <translation>M3 a M16, clases 4.6 a 12.9 de ISO 898-1</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Hecho desde</translation>
    </message>
    <message>
        <source>Made to</source>
        <translation>Hecho hasta</translation>
    </message>
    <message>
        <source>Main jet in other air</source>
        <translation>Chiclé principal en otro aire</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Marking of a tyre</source>
        <translation>Marcado de un neumático</translation>
    </message>
    <message>
        <source>Maryland</source>
        <translation>Maryland</translation>
    </message>
    <message>
        <source>May mix</source>
        <translation>Se puede mezclar</translation>
    </message>
    <message>
        <source>Mean bearing diameter</source>
        <translation>Diámetro medio de apoyo</translation>
    </message>
    <message>
        <source>Mean piston speed</source>
        <translation>Velocidad media del pistón</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Nearest in steps</source>
        <translation>Más cercana</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Nominal voltage</source>
        <translation>Tensión nominal</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Number of bolts</source>
        <translation>Número de tornillos</translation>
    </message>
    <message>
        <source>Numbered by</source>
        <translation>Numerados por</translation>
    </message>
    <message>
        <source>Nut factor K</source>
        <translation>Factor K</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Aceite</translation>
    </message>
    <message>
        <source>Order of tightening</source>
        <translation>Orden de apriete</translation>
    </message>
    <message>
        <source>Overall ratio</source>
        <translation>Relación total</translation>
    </message>
    <message>
        <source>Part of the circuit</source>
        <translation>Parte del circuito</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>Piston travel</source>
        <translation>Recorrido del pistón</translation>
    </message>
    <message>
        <source>Possible years</source>
        <translation>Años posibles</translation>
    </message>
    <message>
        <source>Power correction SAE J1349</source>
        <translation>Corrección de potencia SAE J1349</translation>
    </message>
    <message>
        <source>Power lost</source>
        <translation>Potencia perdida</translation>
    </message>
    <message>
        <source>Power of the load</source>
        <translation>Potencia de la carga</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Precarga</translation>
    </message>
    <message>
        <source>Preload from a torque</source>
        <translation>Precarga de un par</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Proof load</source>
        <translation>Carga de prueba</translation>
    </message>
    <message>
        <source>Property class</source>
        <translation>Clase de resistencia</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Relación</translation>
    </message>
    <message>
        <source>Ratio to standard air</source>
        <translation>Relación con el aire normal</translation>
    </message>
    <message>
        <source>Ratio, to 1</source>
        <translation>Relación, a 1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humedad relativa</translation>
    </message>
    <message>
        <source>Remaining</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Reservoir</source>
        <translation>Depósito</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Resistance at 20 degC</source>
        <translation>Resistencia a 20 degC</translation>
    </message>
    <message>
        <source>Resistance of a coil or connection</source>
        <translation>Resistencia de una bobina o conexión</translation>
    </message>
    <message>
        <source>Resistance, mohm/m</source>
        <translation>Resistencia, mohm/m</translation>
    </message>
    <message>
        <source>Rider and luggage</source>
        <translation>Conductor y equipaje</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Llanta</translation>
    </message>
    <message>
        <source>Road speed at an engine speed.</source>
        <translation>Velocidad en carretera a un régimen del motor.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Norma</translation>
    </message>
    <message>
        <source>Second pressure</source>
        <translation>Segunda presión</translation>
    </message>
    <message>
        <source>Second reading at the first temperature</source>
        <translation>Segunda lectura a la primera temperatura</translation>
    </message>
    <message>
        <source>Second temperature</source>
        <translation>Segunda temperatura</translation>
    </message>
    <message>
        <source>Share of proof load</source>
        <translation>Parte de la carga de prueba</translation>
    </message>
    <message>
        <source>Share of the voltage</source>
        <translation>Parte de la tensión</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Pastilla</translation>
    </message>
    <message>
        <source>Shim fitted</source>
        <translation>Pastilla montada</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Size, load and speed from what is moulded into the wall.</source>
        <translation>Medida, carga y velocidad por lo escrito en el flanco.</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Sobra</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Densidad del ácido</translation>
    </message>
    <message>
        <source>Specific gravity at 26.7 degC</source>
        <translation>Densidad a 26,7 degC</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Speed from gearing</source>
        <translation>Velocidad por la relación</translation>
    </message>
    <message>
        <source>Speedometer error</source>
        <translation>Error del velocímetro</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Etapas</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Steps of the shims</source>
        <translation>Pasos de las pastillas</translation>
    </message>
    <message>
        <source>Stress area</source>
        <translation>Sección resistente</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Temperature now</source>
        <translation>Temperatura actual</translation>
    </message>
    <message>
        <source>Temperature of the wire</source>
        <translation>Temperatura del cable</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Temperatura entonces</translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation>Temperatura allí</translation>
    </message>
    <message>
        <source>The next date or odometer reading for work that comes again.</source>
        <translation>La próxima fecha o kilometraje de un trabajo que se repite.</translation>
    </message>
    <message>
        <source>The same quantity in another unit, by exact factors.</source>
        <translation>La misma magnitud en otra unidad, con factores exactos.</translation>
    </message>
    <message>
        <source>The volume is</source>
        <translation>El volumen es</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Thread is in</source>
        <translation>La rosca está en</translation>
    </message>
    <message>
        <source>Time between</source>
        <translation>Tiempo entre medias</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Veces</translation>
    </message>
    <message>
        <source>Times the system&apos;s content</source>
        <translation>Veces el contenido del circuito</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>To be filled in</source>
        <translation>Por poner</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Torque for a bolt</source>
        <translation>Par para un tornillo</translation>
    </message>
    <message>
        <source>Torque wanted</source>
        <translation>Par deseado</translation>
    </message>
    <message>
        <source>Torque wrench with an adapter</source>
        <translation>Llave dinamométrica con adaptador</translation>
    </message>
    <message>
        <source>Tread depth</source>
        <translation>Profundidad del dibujo</translation>
    </message>
    <message>
        <source>True distance</source>
        <translation>Distancia real</translation>
    </message>
    <message>
        <source>True speed</source>
        <translation>Velocidad real</translation>
    </message>
    <message>
        <source>Turn the beam</source>
        <translation>Girar el haz</translation>
    </message>
    <message>
        <source>Two-stroke mixture</source>
        <translation>Mezcla de dos tiempos</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Tyre pressure in other weather or height</source>
        <translation>Presión del neumático con otro tiempo o altitud</translation>
    </message>
    <message>
        <source>UK inspection</source>
        <translation>inspección británica</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>United Kingdom</source>
        <translation>Reino Unido</translation>
    </message>
    <message>
        <source>United States, federal</source>
        <translation>Estados Unidos, federal</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>Upper limit of the manual</source>
        <translation>Límite superior del manual</translation>
    </message>
    <message>
        <source>Valid</source>
        <translation>Válido</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Value in the unit wanted</source>
        <translation>Valor en la unidad deseada</translation>
    </message>
    <message>
        <source>Valve shim</source>
        <translation>Pastilla de válvula</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Voltage at rest</source>
        <translation>Tensión en reposo</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Caída de tensión</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Wear and what remains</source>
        <translation>Desgaste y lo que queda</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>What a gauge will show when the tyre is warmer, colder, higher or lower.</source>
        <translation>Qué marcará el aparato con el neumático más caliente, frío, alto o bajo.</translation>
    </message>
    <message>
        <source>What a torque does to a bolt: how near to its proof load.</source>
        <translation>Qué hace un par a un tornillo: cuán cerca de su carga de prueba.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>What the compression gauge would have shown at sea level, to compare with the manual.</source>
        <translation>Qué habría marcado el compresímetro al nivel del mar, para comparar con el manual.</translation>
    </message>
    <message>
        <source>What to set on the wrench when a crowfoot or extension lengthens it.</source>
        <translation>Qué poner en la llave cuando un adaptador la alarga.</translation>
    </message>
    <message>
        <source>When a tyre was made, from the date code on its wall.</source>
        <translation>Cuándo se hizo un neumático, por el código de su flanco.</translation>
    </message>
    <message>
        <source>When it is due again</source>
        <translation>Cuándo toca de nuevo</translation>
    </message>
    <message>
        <source>Where the cut-off of the dipped beam belongs on a wall, and which way to turn the lamp.</source>
        <translation>Dónde va el corte de la luz de cruce en una pared, y hacia dónde girar el faro.</translation>
    </message>
    <message>
        <source>Where to look, likeliest first</source>
        <translation>Dónde mirar, lo más probable primero</translation>
    </message>
    <message>
        <source>Whether a frame number was read rightly, and what years its code may mean.</source>
        <translation>Si un número de bastidor se leyó bien, y qué años puede indicar su código.</translation>
    </message>
    <message>
        <source>Whether a lead, switch or earth loses too much.</source>
        <translation>Si un cable, un interruptor o una masa pierde demasiado.</translation>
    </message>
    <message>
        <source>Whether a new fluid may go onto what is in, and what it bears.</source>
        <translation>Si un líquido nuevo puede ir con el que hay, y qué aguanta.</translation>
    </message>
    <message>
        <source>Whether a part is within its service limit and how far it will go at the same rate.</source>
        <translation>Si una pieza está en su límite de servicio y cuánto aguantará al mismo ritmo.</translation>
    </message>
    <message>
        <source>Whether the generator feeds all that is lit at once.</source>
        <translation>Si el generador alimenta todo lo encendido a la vez.</translation>
    </message>
    <message>
        <source>Whether the tread is deep enough for the law of a place.</source>
        <translation>Si el dibujo es bastante profundo para la ley de un lugar.</translation>
    </message>
    <message>
        <source>Which shim brings the clearance to what is wanted.</source>
        <translation>Qué pastilla lleva el juego al deseado.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Wire and fuse</source>
        <translation>Cable y fusible</translation>
    </message>
    <message>
        <source>Wrench length L</source>
        <translation>Longitud de la llave L</translation>
    </message>
    <message>
        <source>Wrench setting</source>
        <translation>Ajuste de la llave</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>a crankcase&apos;s accepted drop is the service manual&apos;s figure</source>
        <translation>la caída admitida de un cárter es la del manual de taller</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25 or a distance such as 12400 km</source>
        <translation>una fecha como 2026-11-25 o una distancia como 12400 km</translation>
    </message>
    <message>
        <source>a digital or sliding depth gauge without a better figure is taken to be good to 0.1 mm</source>
        <translation>un profundímetro digital o de corredera sin mejor dato se toma bueno a 0,1 mm</translation>
    </message>
    <message>
        <source>a drop means something only with the load current flowing</source>
        <translation>una caída dice algo solo con la corriente de carga</translation>
    </message>
    <message>
        <source>a fuse protects the wire, not the load: never fit a larger one</source>
        <translation>un fusible protege el cable, no la carga: nunca poner uno mayor</translation>
    </message>
    <message>
        <source>a generator gives its rating only at revs; ignition and charging need their share</source>
        <translation>un generador da su potencia solo con revoluciones; encendido y carga necesitan su parte</translation>
    </message>
    <message>
        <source>a legal tyre can be worn out: the maker&apos;s limit is often higher</source>
        <translation>un neumático legal puede estar gastado: el límite del fabricante suele ser mayor</translation>
    </message>
    <message>
        <source>a loss smaller than the gauge&apos;s error is none that was measured</source>
        <translation>una pérdida menor que el error del aparato no está medida</translation>
    </message>
    <message>
        <source>a metric thread such as M8 or M8x1.25: measure it, or read the parts list</source>
        <translation>una rosca métrica como M8 o M8x1.25: medirla o leer la lista de piezas</translation>
    </message>
    <message>
        <source>a number with its unit, such as 25 lbf.ft</source>
        <translation>un número con su unidad, por ejemplo 25 lbf.ft</translation>
    </message>
    <message>
        <source>a pad at its backing plate, a cracked disc or a grooved drum is finished whatever the sum says</source>
        <translation>una pastilla en su soporte, un disco agrietado o un tambor rayado está acabado diga lo que diga la cuenta</translation>
    </message>
    <message>
        <source>a skimmed head raises the ratio: fuel and timing must suit it</source>
        <translation>una culata rebajada sube la relación: gasolina y encendido deben ajustarse</translation>
    </message>
    <message>
        <source>a starting point only: final jetting is by plug reading and the manual; a weak mixture seizes a two-stroke</source>
        <translation>solo un punto de partida: el ajuste final es por la bujía y el manual; una mezcla pobre gripa un dos tiempos</translation>
    </message>
    <message>
        <source>a tank filled to the mark holds finished mix</source>
        <translation>un depósito lleno a la marca tiene mezcla hecha</translation>
    </message>
    <message>
        <source>a tape lies along the arc, calipers measure the chord</source>
        <translation>una cinta sigue el arco, un calibre mide la cuerda</translation>
    </message>
    <message>
        <source>a tyre stretches a little: the real change is slightly smaller</source>
        <translation>un neumático se estira un poco: el cambio real es algo menor</translation>
    </message>
    <message>
        <source>a winding can pass cold and fail hot</source>
        <translation>un bobinado puede pasar en frío y fallar en caliente</translation>
    </message>
    <message>
        <source>a young tyre can be cracked, hard or damaged: look at it</source>
        <translation>un neumático joven puede estar agrietado, duro o dañado: mirarlo</translation>
    </message>
    <message>
        <source>above sea level</source>
        <translation>sobre el mar</translation>
    </message>
    <message>
        <source>above sea level; the standard pressure there is used</source>
        <translation>sobre el mar; se toma la presión normal de allí</translation>
    </message>
    <message>
        <source>acid burns and charging gas explodes: glasses, gloves, no sparks, negative lead off first</source>
        <translation>el ácido quema y el gas de carga explota: gafas, guantes, sin chispas, el negativo fuera primero</translation>
    </message>
    <message>
        <source>across, pair by pair</source>
        <translation>en cruz, par a par</translation>
    </message>
    <message>
        <source>air bleeds, needle circuit and fuel change the result (common practice, no source)</source>
        <translation>aires, aguja y gasolina cambian el resultado (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>all that is left at top dead centre, by filling with oil</source>
        <translation>todo lo que queda en el punto muerto superior, llenando con aceite</translation>
    </message>
    <message>
        <source>altitude as in the standard atmosphere; CIPM-2007 for 15 to 27 degC and 600 to 1100 hPa; dry and humid formula differ by 0.04 % at no humidity</source>
        <translation>altitud como en la atmósfera normal; CIPM-2007 para 15 a 27 degC y 600 a 1100 hPa; las fórmulas seca y húmeda difieren un 0,04 % sin humedad</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>an order printed in the manual or cast beside the bolts wins</source>
        <translation>un orden impreso en el manual o fundido junto a los tornillos va primero</translation>
    </message>
    <message>
        <source>as in the papers</source>
        <translation>como en los papeles</translation>
    </message>
    <message>
        <source>as stamped in the frame, 17 characters or an older number</source>
        <translation>como grabado en el bastidor, 17 caracteres o un número antiguo</translation>
    </message>
    <message>
        <source>as the gauge shows it</source>
        <translation>como marca el aparato</translation>
    </message>
    <message>
        <source>at the bolt, from the manual</source>
        <translation>en el tornillo, del manual</translation>
    </message>
    <message>
        <source>at the most worn place</source>
        <translation>en el punto más gastado</translation>
    </message>
    <message>
        <source>at the most worn place of the middle three quarters</source>
        <translation>en el punto más gastado de los tres cuartos centrales</translation>
    </message>
    <message>
        <source>at the speed the manual names, often 4000 to 5000 rpm</source>
        <translation>al régimen que nombra el manual, a menudo 4000 a 5000 rpm</translation>
    </message>
    <message>
        <source>battery charged and connected, warm engine</source>
        <translation>batería cargada y conectada, motor caliente</translation>
    </message>
    <message>
        <source>battery post to its clamp</source>
        <translation>borne de batería a su terminal</translation>
    </message>
    <message>
        <source>battery post to starter solenoid</source>
        <translation>borne de batería al solenoide</translation>
    </message>
    <message>
        <source>behind the pistons</source>
        <translation>tras los pistones</translation>
    </message>
    <message>
        <source>between centres</source>
        <translation>entre centros</translation>
    </message>
    <message>
        <source>between marks on the road</source>
        <translation>entre hitos de la carretera</translation>
    </message>
    <message>
        <source>between the two probes</source>
        <translation>entre las dos puntas</translation>
    </message>
    <message>
        <source>bolts are numbered round the circle, or along the row, from 1</source>
        <translation>los tornillos se numeran en círculo, o a lo largo de la fila, desde 1</translation>
    </message>
    <message>
        <source>bore in hundredths of a millimetre</source>
        <translation>orificio en centésimas de milímetro</translation>
    </message>
    <message>
        <source>brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop</source>
        <translation>el líquido de frenos daña pintura, piel y ojos; los frenos se prueban antes de que el vehículo salga del taller</translation>
    </message>
    <message>
        <source>bulb types or watts that burn together, separated by commas: H4, 2 x P21W, 5 W</source>
        <translation>tipos de bombilla o vatios encendidos juntos, separados por comas: H4, 2 x P21W, 5 W</translation>
    </message>
    <message>
        <source>by hydrometer; flooded batteries only</source>
        <translation>con densímetro; solo baterías con tapones</translation>
    </message>
    <message>
        <source>by satellite or by stop-watch</source>
        <translation>por satélite o cronómetro</translation>
    </message>
    <message>
        <source>centre of the lamp above the ground, rider on</source>
        <translation>centro del faro sobre el suelo, con conductor</translation>
    </message>
    <message>
        <source>centred piston pin; dial gauge in line with the cylinder</source>
        <translation>bulón centrado; reloj comparador en el eje del cilindro</translation>
    </message>
    <message>
        <source>closed tyre, dry air, weather as in the standard atmosphere</source>
        <translation>neumático cerrado, aire seco, tiempo como en la atmósfera normal</translation>
    </message>
    <message>
        <source>coil or winding</source>
        <translation>bobina o bobinado</translation>
    </message>
    <message>
        <source>cold, with a feeler gauge</source>
        <translation>en frío, con galgas</translation>
    </message>
    <message>
        <source>compare the frame with the papers: a number that fits its check digit can still be the wrong one</source>
        <translation>comparar el bastidor con los papeles: un número con dígito correcto puede ser el equivocado</translation>
    </message>
    <message>
        <source>continuity</source>
        <translation>continuidad</translation>
    </message>
    <message>
        <source>copper; class 5 areas from the table, others scaled by area</source>
        <translation>cobre; secciones de clase 5 de la tabla, las demás en proporción</translation>
    </message>
    <message>
        <source>cut-off on the wall below the lamp&apos;s centre</source>
        <translation>corte en la pared bajo el centro del faro</translation>
    </message>
    <message>
        <source>disconnect the part first: what lies beside it is measured too</source>
        <translation>desconectar antes la pieza: se mide también lo que está al lado</translation>
    </message>
    <message>
        <source>drive square to middle of the nut</source>
        <translation>del cuadrado al centro de la tuerca</translation>
    </message>
    <message>
        <source>dry air without it</source>
        <translation>sin ella, aire seco</translation>
    </message>
    <message>
        <source>dynamo</source>
        <translation>dinamo</translation>
    </message>
    <message>
        <source>earth</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>earth side of any load</source>
        <translation>lado masa de un consumidor</translation>
    </message>
    <message>
        <source>engine off, a while after riding</source>
        <translation>motor parado, un rato después de circular</translation>
    </message>
    <message>
        <source>engine turns for one turn of the wheel, all stages multiplied</source>
        <translation>vueltas de motor por vuelta de rueda, todas las etapas multiplicadas</translation>
    </message>
    <message>
        <source>engine warm, lamps on</source>
        <translation>motor caliente, luces encendidas</translation>
    </message>
    <message>
        <source>expanded (k = 2), of the reading as measured; without it an ordinary meter is assumed</source>
        <translation>expandida (k = 2), de la lectura; sin ella se supone un aparato corriente</translation>
    </message>
    <message>
        <source>expanded uncertainty (k = 2) of the instrument; without it an ordinary one is assumed</source>
        <translation>incertidumbre expandida (k = 2) del instrumento; sin ella se supone una corriente</translation>
    </message>
    <message>
        <source>fit only sizes that the machine&apos;s papers allow</source>
        <translation>montar solo medidas que admitan los papeles del vehículo</translation>
    </message>
    <message>
        <source>flooded, with caps</source>
        <translation>abierta, con tapones</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>caudal</translation>
    </message>
    <message>
        <source>flush until it runs clear, whatever the sum says</source>
        <translation>purgar hasta que salga limpio, diga lo que diga la cuenta</translation>
    </message>
    <message>
        <source>for the mean piston speed</source>
        <translation>para la velocidad media del pistón</translation>
    </message>
    <message>
        <source>from the first to the second reading</source>
        <translation>de la primera a la segunda lectura</translation>
    </message>
    <message>
        <source>from the lamp</source>
        <translation>desde el faro</translation>
    </message>
    <message>
        <source>from the manual</source>
        <translation>del manual</translation>
    </message>
    <message>
        <source>from the manual or from a new part</source>
        <translation>del manual o de una pieza nueva</translation>
    </message>
    <message>
        <source>from the manual, at 20 degC</source>
        <translation>del manual, a 20 degC</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the angle</source>
        <translation>desde el punto muerto superior; dar este o el ángulo</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the travel</source>
        <translation>desde el punto muerto superior; dar este o el recorrido</translation>
    </message>
    <message>
        <source>fuel alone</source>
        <translation>solo gasolina</translation>
    </message>
    <message>
        <source>fuel to oil by volume, from the manual: 50, 50:1 or 2 %</source>
        <translation>gasolina a aceite en volumen, del manual: 50, 50:1 o 2 %</translation>
    </message>
    <message>
        <source>gauges and cranking speeds differ: compare with the manual&apos;s method, and cylinders with each other</source>
        <translation>los aparatos y regímenes de arranque difieren: comparar con el método del manual, y los cilindros entre sí</translation>
    </message>
    <message>
        <source>give this or the power</source>
        <translation>dar esta o la potencia</translation>
    </message>
    <message>
        <source>glass fuses by IEC 60127 carry their speed in letters, FF F M T TT from very fast to very slow: renew like by like</source>
        <translation>los fusibles de vidrio IEC 60127 llevan su rapidez en letras, FF F M T TT de muy rápido a muy lento: cambiar por igual</translation>
    </message>
    <message>
        <source>grip mark to middle of the drive square</source>
        <translation>de la marca del mango al centro del cuadrado</translation>
    </message>
    <message>
        <source>half of washer face plus hole; an ordinary hexagon head over a medium hole is assumed</source>
        <translation>mitad de apoyo más agujero; se supone cabeza hexagonal corriente en agujero medio</translation>
    </message>
    <message>
        <source>hose and pipe together</source>
        <translation>latiguillo y tubo juntos</translation>
    </message>
    <message>
        <source>how far the bolt is to be used</source>
        <translation>hasta dónde se aprovecha el tornillo</translation>
    </message>
    <message>
        <source>how often the circuit&apos;s content is pushed through: two or more</source>
        <translation>cuántas veces se empuja el contenido: dos o más</translation>
    </message>
    <message>
        <source>how the bolts lie</source>
        <translation>cómo están los tornillos</translation>
    </message>
    <message>
        <source>how the carburettor&apos;s maker numbers jets</source>
        <translation>cómo numera los chiclés el fabricante del carburador</translation>
    </message>
    <message>
        <source>ignition off, meter in the negative lead</source>
        <translation>encendido apagado, aparato en el cable negativo</translation>
    </message>
    <message>
        <source>ignition off, plug lead earthed, hands away from the kick-start</source>
        <translation>encendido apagado, cable de bujía a masa, manos lejos del pedal</translation>
    </message>
    <message>
        <source>ignition or kill switch, each contact</source>
        <translation>llave o interruptor de paro, cada contacto</translation>
    </message>
    <message>
        <source>in how many equal steps</source>
        <translation>en cuántos pasos iguales</translation>
    </message>
    <message>
        <source>in thread and under the head; give this or nut_factor</source>
        <translation>en rosca y bajo cabeza; dar este o nut_factor</translation>
    </message>
    <message>
        <source>inside diameter, about 3 mm</source>
        <translation>interior, unos 3 mm</translation>
    </message>
    <message>
        <source>less the resistance of the leads held together</source>
        <translation>menos la resistencia de las puntas juntas</translation>
    </message>
    <message>
        <source>level ground, tyres at pressure, rider on, suspension bounced</source>
        <translation>suelo llano, neumáticos a presión, conductor encima, suspensión asentada</translation>
    </message>
    <message>
        <source>lighting feed plus return</source>
        <translation>luces, ida y retorno</translation>
    </message>
    <message>
        <source>limits differ by country, class and day: the law of the place applies</source>
        <translation>los límites cambian según país, clase y fecha: vale la ley del lugar</translation>
    </message>
    <message>
        <source>load index 30 to 80, speed symbols with a fixed speed</source>
        <translation>índice de carga 30 a 80, códigos de velocidad con velocidad fija</translation>
    </message>
    <message>
        <source>loosen in the opposite order</source>
        <translation>aflojar en el orden inverso</translation>
    </message>
    <message>
        <source>magnetic switch</source>
        <translation>interruptor magnético</translation>
    </message>
    <message>
        <source>measured while the load current flows</source>
        <translation>medida mientras pasa la corriente de carga</translation>
    </message>
    <message>
        <source>measured: the stamp may be worn off or wrong</source>
        <translation>medida: la marca puede estar gastada o equivocada</translation>
    </message>
    <message>
        <source>mechanical starter switch</source>
        <translation>interruptor mecánico de arranque</translation>
    </message>
    <message>
        <source>moped</source>
        <translation>ciclomotor</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>motocicleta</translation>
    </message>
    <message>
        <source>never bleed a hot tyre down to its cold pressure</source>
        <translation>nunca desinflar un neumático caliente a su presión en frío</translation>
    </message>
    <message>
        <source>never let the reservoir run empty; never use again what came out</source>
        <translation>nunca dejar vaciarse el depósito; nunca reutilizar lo que salió</translation>
    </message>
    <message>
        <source>never press the starter with the meter in the lead: its fuse blows</source>
        <translation>nunca pulsar el arranque con el aparato en el cable: salta su fusible</translation>
    </message>
    <message>
        <source>never run an alternator with the battery off: the spike destroys regulator and lamps</source>
        <translation>nunca hacer girar un alternador sin batería: el pico destruye regulador y lámparas</translation>
    </message>
    <message>
        <source>no clearance at all means that the valve may not close: measure again with a thinner shim</source>
        <translation>sin juego puede que la válvula no cierre: medir otra vez con una pastilla más fina</translation>
    </message>
    <message>
        <source>no slip of belt, clutch or tyre is allowed for</source>
        <translation>sin deslizamiento de correa, embrague o neumático</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>nominal</translation>
    </message>
    <message>
        <source>nominal sizes of an unloaded tyre: a loaded one rolls a few per cent shorter</source>
        <translation>medidas nominales de un neumático sin carga: cargado rueda un poco menos</translation>
    </message>
    <message>
        <source>of a barometer at the place, not reduced to sea level; replaces the altitude</source>
        <translation>de un barómetro en el sitio, no reducida al mar; sustituye a la altitud</translation>
    </message>
    <message>
        <source>of a headlamp&apos;s two filaments the larger counts; tail and stop count together</source>
        <translation>de los dos filamentos de un faro cuenta el mayor; trasera y freno cuentan juntas</translation>
    </message>
    <message>
        <source>of one joint</source>
        <translation>de una unión</translation>
    </message>
    <message>
        <source>of the acid</source>
        <translation>del ácido</translation>
    </message>
    <message>
        <source>of the air</source>
        <translation>del aire</translation>
    </message>
    <message>
        <source>of the air in the tyre at that reading</source>
        <translation>del aire del neumático en esa lectura</translation>
    </message>
    <message>
        <source>of the air in the tyre now</source>
        <translation>del aire del neumático ahora</translation>
    </message>
    <message>
        <source>of the air inside</source>
        <translation>del aire de dentro</translation>
    </message>
    <message>
        <source>of the capacity</source>
        <translation>de la capacidad</translation>
    </message>
    <message>
        <source>of the copper; 18 AWG is read too</source>
        <translation>del cobre; también se lee 18 AWG</translation>
    </message>
    <message>
        <source>of the crankshaft</source>
        <translation>del cigüeñal</translation>
    </message>
    <message>
        <source>of the cylinder</source>
        <translation>del cilindro</translation>
    </message>
    <message>
        <source>of the driven tyre, rolled out under load</source>
        <translation>del neumático motriz, rodado con carga</translation>
    </message>
    <message>
        <source>of the machine</source>
        <translation>del vehículo</translation>
    </message>
    <message>
        <source>of the piston</source>
        <translation>del pistón</translation>
    </message>
    <message>
        <source>of the winding</source>
        <translation>del bobinado</translation>
    </message>
    <message>
        <source>often 0.05 or 0.025</source>
        <translation>a menudo 0,05 o 0,025</translation>
    </message>
    <message>
        <source>older and many European and Asian numbers have no check digit</source>
        <translation>los antiguos y muchos números europeos y asiáticos no tienen dígito de control</translation>
    </message>
    <message>
        <source>one connection</source>
        <translation>una conexión</translation>
    </message>
    <message>
        <source>one per cent line</source>
        <translation>línea del uno por ciento</translation>
    </message>
    <message>
        <source>one to two hours after charging, nothing switched on</source>
        <translation>una o dos horas tras la carga, nada encendido</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>solo ida</translation>
    </message>
    <message>
        <source>only copper windings are corrected</source>
        <translation>solo se corrigen bobinados de cobre</translation>
    </message>
    <message>
        <source>petrol before the oil goes in</source>
        <translation>gasolina antes del aceite</translation>
    </message>
    <message>
        <source>petrol: no flame, fresh air, a can made for it</source>
        <translation>gasolina: sin llamas, aire fresco, una lata hecha para ello</translation>
    </message>
    <message>
        <source>printed on the battery</source>
        <translation>escrita en la batería</translation>
    </message>
    <message>
        <source>printed on the case</source>
        <translation>escrita en la caja</translation>
    </message>
    <message>
        <source>published limits differ and were made for heavier machines: the manual wins</source>
        <translation>los límites publicados difieren y son para máquinas más pesadas: el manual va primero</translation>
    </message>
    <message>
        <source>published nut factors for the same words differ by up to half, and preload scatters by 25 to 35 % at one torque: a torque never proves a preload</source>
        <translation>los factores publicados para las mismas palabras difieren hasta la mitad, y la precarga varía de 25 a 35 % con un par: un par nunca prueba una precarga</translation>
    </message>
    <message>
        <source>rated output at riding speed</source>
        <translation>potencia nominal a régimen de marcha</translation>
    </message>
    <message>
        <source>rated watts at 12 V: at 13.5 V a bulb draws about a sixth more</source>
        <translation>vatios nominales a 12 V: a 13,5 V una bombilla toma un sexto más</translation>
    </message>
    <message>
        <source>rated; give this or the current</source>
        <translation>nominal; dar esta o la corriente</translation>
    </message>
    <message>
        <source>refused where the torque would pass the bolt&apos;s proof load</source>
        <translation>rechazado donde el par pasaría la carga de prueba del tornillo</translation>
    </message>
    <message>
        <source>regulator output to battery positive</source>
        <translation>salida del regulador al positivo de batería</translation>
    </message>
    <message>
        <source>replaces the table</source>
        <translation>sustituye a la tabla</translation>
    </message>
    <message>
        <source>replaces the usual band</source>
        <translation>sustituye a la banda habitual</translation>
    </message>
    <message>
        <source>rested one to two hours; published tables differ by up to 0.09 V; voltage is not corrected for temperature for want of a second source</source>
        <translation>reposada una o dos horas; las tablas publicadas difieren hasta 0,09 V; la tensión no se corrige por temperatura por falta de otra fuente</translation>
    </message>
    <message>
        <source>round the circle</source>
        <translation>en círculo</translation>
    </message>
    <message>
        <source>row, from the middle</source>
        <translation>fila, desde el centro</translation>
    </message>
    <message>
        <source>running engine: exhaust gas, hot parts, loose clothing</source>
        <translation>motor en marcha: gases de escape, piezas calientes, ropa suelta</translation>
    </message>
    <message>
        <source>self-discharge comes on top, more so in the warm and in an old battery</source>
        <translation>la autodescarga se suma, más en calor y en batería vieja</translation>
    </message>
    <message>
        <source>since the part was new</source>
        <translation>desde que la pieza era nueva</translation>
    </message>
    <message>
        <source>single-phase alternator</source>
        <translation>alternador monofásico</translation>
    </message>
    <message>
        <source>solenoid switch</source>
        <translation>solenoide</translation>
    </message>
    <message>
        <source>stamped on the head; no mark means unknown, not 8.8</source>
        <translation>grabada en la cabeza; sin marca es desconocida, no 8.8</translation>
    </message>
    <message>
        <source>starter body to battery negative</source>
        <translation>cuerpo del arranque al negativo de batería</translation>
    </message>
    <message>
        <source>starter control circuit, both windings on</source>
        <translation>circuito de mando del arranque, los dos bobinados activos</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acero</translation>
    </message>
    <message>
        <source>steel bolts in steel; soft threads, studs, seals and plastic need the manual&apos;s figure</source>
        <translation>tornillos de acero en acero; roscas blandas, espárragos, juntas y plástico piden el valor del manual</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J or 3.50-10 59J</source>
        <translation>por ejemplo 100/90-10 56J o 3.50-10 59J</translation>
    </message>
    <message>
        <source>taken as now for dates</source>
        <translation>tomado como ahora para fechas</translation>
    </message>
    <message>
        <source>that flowed</source>
        <translation>que pasaba</translation>
    </message>
    <message>
        <source>the age limit is the shop&apos;s: common practice, no source</source>
        <translation>el límite de edad es del taller: práctica común, sin fuente</translation>
    </message>
    <message>
        <source>the cap and the manual name the grade: use that one</source>
        <translation>la tapa y el manual nombran el tipo: usar ese</translation>
    </message>
    <message>
        <source>the date or the odometer now; today where dates are meant</source>
        <translation>la fecha o los kilómetros ahora; hoy si son fechas</translation>
    </message>
    <message>
        <source>the day to count to</source>
        <translation>el día hasta el que se cuenta</translation>
    </message>
    <message>
        <source>the figure itself is the manual&apos;s: too early holes the piston</source>
        <translation>el valor es el del manual: demasiado avance agujerea el pistón</translation>
    </message>
    <message>
        <source>the finished mix</source>
        <translation>la mezcla hecha</translation>
    </message>
    <message>
        <source>the hand must pull at the grip mark: anywhere else the sum is wrong</source>
        <translation>la mano debe tirar en la marca del mango: en otro sitio la cuenta falla</translation>
    </message>
    <message>
        <source>the last four digits of the DOT code, week and year, such as 2508; three before 2000</source>
        <translation>las cuatro últimas cifras del código DOT, semana y año, por ejemplo 2508; tres antes de 2000</translation>
    </message>
    <message>
        <source>the law of the place applies</source>
        <translation>vale la ley del lugar</translation>
    </message>
    <message>
        <source>the load holds at the tyre&apos;s reference pressure</source>
        <translation>la carga vale a la presión de referencia del neumático</translation>
    </message>
    <message>
        <source>the loss is taken as even over time; days are counted from the second reading</source>
        <translation>la pérdida se toma uniforme; los días cuentan desde la segunda lectura</translation>
    </message>
    <message>
        <source>the machine&apos;s wiring diagram wins</source>
        <translation>el esquema eléctrico del vehículo va primero</translation>
    </message>
    <message>
        <source>the manual&apos;s figure for a soft thread</source>
        <translation>el valor del manual para una rosca blanda</translation>
    </message>
    <message>
        <source>the manual&apos;s interval wins; whichever of time and distance comes first counts</source>
        <translation>manda el intervalo del manual; de tiempo y distancia cuenta lo que llegue antes</translation>
    </message>
    <message>
        <source>the manual&apos;s ratio and kind of oil win; too little oil seizes the engine</source>
        <translation>mandan la relación y el aceite del manual; poco aceite gripa el motor</translation>
    </message>
    <message>
        <source>the manual&apos;s service limit</source>
        <translation>el límite de servicio del manual</translation>
    </message>
    <message>
        <source>the number stamped on it</source>
        <translation>el número grabado</translation>
    </message>
    <message>
        <source>the power correction is for four-stroke petrol engines without supercharger</source>
        <translation>la corrección de potencia vale para motores de gasolina de cuatro tiempos sin compresor</translation>
    </message>
    <message>
        <source>the pressure at which something has to be done</source>
        <translation>la presión a la que hay que hacer algo</translation>
    </message>
    <message>
        <source>the setting must lie in the wrench&apos;s range</source>
        <translation>el ajuste debe estar en el rango de la llave</translation>
    </message>
    <message>
        <source>the torque that is or was applied</source>
        <translation>el par aplicado o por aplicar</translation>
    </message>
    <message>
        <source>the unit wanted, such as N.m</source>
        <translation>la unidad deseada, por ejemplo N.m</translation>
    </message>
    <message>
        <source>the usual band is worked out here: the manual wins</source>
        <translation>la banda habitual está calculada aquí: el manual va primero</translation>
    </message>
    <message>
        <source>three-phase alternator</source>
        <translation>alternador trifásico</translation>
    </message>
    <message>
        <source>throttle open, engine warm</source>
        <translation>gas abierto, motor caliente</translation>
    </message>
    <message>
        <source>torque and energy, gauge and absolute pressure are not converted into each other</source>
        <translation>par y energía, presión manométrica y absoluta no se convierten entre sí</translation>
    </message>
    <message>
        <source>torque factor of the surface, about 0.2 dry steel, 0.15 oiled; give this or friction</source>
        <translation>factor de par de la superficie, unos 0,2 acero seco, 0,15 aceitado; dar este o el rozamiento</translation>
    </message>
    <message>
        <source>turn the engine by hand and measure again afterwards</source>
        <translation>después girar el motor a mano y medir otra vez</translation>
    </message>
    <message>
        <source>two or three wires from the alternator; brushes: a dynamo</source>
        <translation>dos o tres cables del alternador; escobillas: una dinamo</translation>
    </message>
    <message>
        <source>two-stroke makers may quote the ratio from exhaust closing: say which</source>
        <translation>los fabricantes de dos tiempos a veces dan la relación desde el cierre del escape: decir cuál</translation>
    </message>
    <message>
        <source>tyre size and pressure change it; the law of the place sets what is allowed</source>
        <translation>medida y presión del neumático lo cambian; la ley del lugar dice qué se admite</translation>
    </message>
    <message>
        <source>until the next ride</source>
        <translation>hasta la próxima salida</translation>
    </message>
    <message>
        <source>up to the upper mark</source>
        <translation>hasta la marca superior</translation>
    </message>
    <message>
        <source>upper edge above bottom dead centre; for two-strokes counted from exhaust closing</source>
        <translation>borde superior sobre el punto muerto inferior; en dos tiempos cuenta desde el cierre del escape</translation>
    </message>
    <message>
        <source>venturi carburettor, same engine speed and throttle, same fuel</source>
        <translation>carburador de venturi, mismo régimen y gas, misma gasolina</translation>
    </message>
    <message>
        <source>voltage alone does not prove a battery: a worn one rests high and falls under load</source>
        <translation>la tensión sola no prueba una batería: una gastada reposa alta y cae con carga</translation>
    </message>
    <message>
        <source>warm beside an engine</source>
        <translation>caliente junto a un motor</translation>
    </message>
    <message>
        <source>wear is seldom even: look again well before</source>
        <translation>el desgaste rara vez es uniforme: mirar otra vez bastante antes</translation>
    </message>
    <message>
        <source>what the bolt screws into</source>
        <translation>en qué se enrosca el tornillo</translation>
    </message>
    <message>
        <source>what the dial shows, a speed or a distance</source>
        <translation>lo que marca la esfera, velocidad o distancia</translation>
    </message>
    <message>
        <source>what the machine will carry</source>
        <translation>lo que llevará el vehículo</translation>
    </message>
    <message>
        <source>what the shop has decided; there is no general law</source>
        <translation>lo que el taller decidió; no hay ley general</translation>
    </message>
    <message>
        <source>where it differs from the thread&apos;s</source>
        <translation>donde difiere del de la rosca</translation>
    </message>
    <message>
        <source>where it will run</source>
        <translation>donde funcionará</translation>
    </message>
    <message>
        <source>where the jet is right</source>
        <translation>donde el chiclé es correcto</translation>
    </message>
    <message>
        <source>where the mark is to go</source>
        <translation>dónde irá la marca</translation>
    </message>
    <message>
        <source>whole positive side of the starter</source>
        <translation>todo el lado positivo del arranque</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>qué ley vale</translation>
    </message>
    <message>
        <source>whose limits apply</source>
        <translation>de quién son los límites</translation>
    </message>
    <message>
        <source>worked out here: the manual wins</source>
        <translation>calculado aquí: el manual va primero</translation>
    </message>
    <message>
        <source>years that have not come are left out</source>
        <translation>los años por venir se quitan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 = %2; factor from %3</source>
        <translation>%1 = %2; factor de %3</translation>
    </message>
    <message>
        <source>%1: lamp centre %2 850 mm: %3 to %4 % down (%5 to %6 deg)</source>
        <translation>%1: centro del faro %2 850 mm: %3 a %4 % hacia abajo (%5 a %6 grados)</translation>
    </message>
    <message>
        <source>above</source>
        <translation>más de</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batería</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>ralentí</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>reposo</translation>
    </message>
    <message>
        <source>revs</source>
        <translation>régimen</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primera</translation>
    </message>
    <message>
        <source>second, same temperature</source>
        <translation>segunda, misma temperatura</translation>
    </message>
    <message>
        <source>(reading + ambient)/ambient stays the same: %1 kPa x 101.325/%2 = %3 kPa</source>
        <translation>(lectura + ambiente)/ambiente queda igual: %1 kPa x 101.325/%2 = %3 kPa</translation>
    </message>
    <message>
        <source>%1 to prove, first: %2</source>
        <translation>%1 por probar, primero: %2</translation>
    </message>
    <message>
        <source>Not before: %1 came off after %2, so it goes on first.</source>
        <translation>No antes: %1 se desmontó después de %2, así que se monta primero.</translation>
    </message>
    <message>
        <source>Not before: the task %1 has to be finished before %2.</source>
        <translation>No antes: la tarea %1 debe acabarse antes de %2.</translation>
    </message>
    <message>
        <source>That is on again already.</source>
        <translation>Ya está montado.</translation>
    </message>
    <message>
        <source>That is the first one already.</source>
        <translation>Ya es el primero.</translation>
    </message>
    <message>
        <source>That is the last one already.</source>
        <translation>Ya es el último.</translation>
    </message>
    <message>
        <source>ask the owner: %1</source>
        <translation>preguntar al dueño: %1</translation>
    </message>
    <message>
        <source>ready to be handed over</source>
        <translation>listo para entregar</translation>
    </message>
    <message>
        <source>does not run as it was found: %1</source>
        <translation>no va como se encontró: %1</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels, more than 120 megapixels: save it smaller</source>
        <translation>la foto tiene %1 x %2 píxeles, más de 120 megapíxeles: guardarla más pequeña</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG: choose a photo</source>
        <translation>no es ni JPEG ni PNG: elegir una foto</translation>
    </message>
    <message>
        <source>there is no such file: check the name</source>
        <translation>no existe ese archivo: revisar el nombre</translation>
    </message>
    <message>
        <source>the file is larger than 300 MB: save it smaller</source>
        <translation>el archivo pasa de 300 MB: guardarlo más pequeño</translation>
    </message>
    <message>
        <source>the file may not be read: check its permissions</source>
        <translation>el archivo no se puede leer: revisar sus permisos</translation>
    </message>
    <message>
        <source>the JPEG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>el JPEG está dañado o cortado (%1): volver a hacer o copiar la foto</translation>
    </message>
    <message>
        <source>the PNG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>el PNG está dañado o cortado (%1): volver a hacer o copiar la foto</translation>
    </message>
    <message>
        <source>a progressive JPEG this large would not fit into memory: save it smaller, or as a baseline JPEG</source>
        <translation>un JPEG progresivo tan grande no cabe en la memoria: guardarlo más pequeño, o como JPEG básico</translation>
    </message>
    <message>
        <source>the JPEG decoder could not be started</source>
        <translation>el lector de JPEG no pudo arrancar</translation>
    </message>
    <message>
        <source>the tap lies outside the photo: tap on the photo</source>
        <translation>el toque cae fuera de la foto: tocar la foto</translation>
    </message>
    <message>
        <source>the stroke leaves the photo: keep it inside</source>
        <translation>el trazo se sale de la foto: quedarse dentro</translation>
    </message>
    <message>
        <source>the stroke needs two different points: draw it across the wires</source>
        <translation>el trazo necesita dos puntos distintos: pasar el dedo por los cables</translation>
    </message>
    <message>
        <source>the mouth of the connector leaves the photo: keep it inside</source>
        <translation>la boca del conector se sale de la foto: quedarse dentro</translation>
    </message>
    <message>
        <source>the mouth of the connector needs two different points: draw it across the wires</source>
        <translation>la boca del conector necesita dos puntos distintos: pasar el dedo por los cables</translation>
    </message>
    <message>
        <source>backup: cannot be written: %1</source>
        <translation>copia: no se puede escribir: %1</translation>
    </message>
    <message>
        <source>%1: has %2 bytes, at most %3 are kept; shorten the text</source>
        <translation>%1: tiene %2 bytes, se guardan como mucho %3; acortar el texto</translation>
    </message>
    <message>
        <source>%1: is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew</source>
        <translation>%1: no está escrito en UTF-8; guardar la hoja como CSV en UTF-8, o escribirlo de nuevo</translation>
    </message>
    <message>
        <source>%1: holds a NUL character; type it anew</source>
        <translation>%1: contiene un carácter NUL; escribirlo de nuevo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one digit behind the mark, and an odometer has at most one: type %2 if that is meant, or %3</source>
        <translation>«%1» tiene más de una cifra tras el signo, y un cuentakilómetros tiene una como mucho: escribe %2 si es eso, o %3</translation>
    </message>
    <message>
        <source>%1 in the step, ± %2 % as of a wrench by ISO 6789-1</source>
        <translation>%1 en el paso, ± %2 % como una llave según ISO 6789-1</translation>
    </message>
    <message>
        <source>one of the readings is outside: %1</source>
        <translation>una de las lecturas está fuera: %1</translation>
    </message>
    <message>
        <source>no instrument was named: 10 % of the reading, k = 2</source>
        <translation>ningún instrumento nombrado: 10 % de la lectura, k = 2</translation>
    </message>
    <message>
        <source>the instrument is not known: name it, or measure again with a known one</source>
        <translation>el instrumento no se conoce: nómbralo, o mide otra vez con uno conocido</translation>
    </message>
    <message>
        <source>%1: read %2, to be %3</source>
        <translation>%1: leído %2, debe ser %3</translation>
    </message>
    <message>
        <source>measured outside its limit: %1, %2</source>
        <translation>medido fuera del límite: %1, %2</translation>
    </message>
    <message>
        <source>not proved: %1. %2</source>
        <translation>no probado: %1. %2</translation>
    </message>
    <message>
        <source>not read back: place %1</source>
        <translation>sin releer: vía %1</translation>
    </message>
    <message>
        <source>not read back: places %1</source>
        <translation>sin releer: vías %1</translation>
    </message>
    <message>
        <source>place %1 does not match</source>
        <translation>vía %1 no coincide</translation>
    </message>
    <message>
        <source>place %1, unit half, does not match</source>
        <translation>vía %1, lado del aparato, no coincide</translation>
    </message>
    <message>
        <source>too close to its limit to call: %1, %2</source>
        <translation>demasiado cerca del límite para decidir: %1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>No se cambió nada. Llevar lo legible a un sitio nuevo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; y nombrar una copia con --from si la hay.</translation>
    </message>
    <message>
        <source>the store in %1 has lost its shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>el almacén en %1 ha perdido su shop.db, pero hay fotos o copias. No se cambió nada. Llevar lo legible a un sitio nuevo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; y nombrar una copia con --from si la hay.</translation>
    </message>
    <message>
        <source>the store in %1 has an empty shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>el almacén en %1 tiene una shop.db vacía, pero hay fotos o copias. No se cambió nada. Llevar lo legible a un sitio nuevo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; y nombrar una copia con --from si la hay.</translation>
    </message>
    <message>
        <source>The disk is full, so this shop can only be looked at. Nothing in it was changed. Make room on the disk to go on working in it.</source>
        <translation>No queda espacio, por eso este taller solo se puede mirar. No se cambió nada en él. Hacer sitio para seguir trabajando en él.</translation>
    </message>
    <message>
        <source>This shop is damaged and can only be looked at. Nothing in it was changed. A new one can be made of what can be read.</source>
        <translation>Este taller está dañado y solo se puede mirar. No se cambió nada en él. Con lo legible se puede hacer uno nuevo.</translation>
    </message>
    <message>
        <source>%1 is the current shop: go on with another one first</source>
        <translation>%1 es el taller actual: antes seguir con otro</translation>
    </message>
    <message>
        <source>%1 could not be removed: %2</source>
        <translation>no se pudo quitar %1: %2</translation>
    </message>
    <message>
        <source>runs as it was written down, clipped, dry under pressure: %1</source>
        <translation>va como se anotó, sujeto, seco con presión: %1</translation>
    </message>
    <message>
        <source>runs as the machine&apos;s manual shows, clipped, dry under pressure: %1</source>
        <translation>va como en el manual del vehículo, sujeto, seco con presión: %1</translation>
    </message>
    <message>
        <source>did not work when it came in, and has no answer: %1</source>
        <translation>no funcionaba al llegar y no tiene respuesta: %1</translation>
    </message>
    <message>
        <source>does not work: %1</source>
        <translation>no funciona: %1</translation>
    </message>
    <message>
        <source>does not work: %1 (%2)</source>
        <translation>no funciona: %1 (%2)</translation>
    </message>
    <message>
        <source>left as it was: %1 (%2)</source>
        <translation>se dejó como estaba: %1 (%2)</translation>
    </message>
    <message>
        <source>left open: %1</source>
        <translation>quedó pendiente: %1</translation>
    </message>
    <message>
        <source>measured outside its limit, and the owner does not want it put right: %1, %2</source>
        <translation>medido fuera del límite, y el dueño no quiere que se repare: %1, %2</translation>
    </message>
    <message>
        <source>next: fit the part: %1</source>
        <translation>sigue: montar el recambio: %1</translation>
    </message>
    <message>
        <source>next: put the wires right: %1</source>
        <translation>sigue: poner bien los cables: %1</translation>
    </message>
    <message>
        <source>part not fitted: %1</source>
        <translation>recambio sin montar: %1</translation>
    </message>
    <message>
        <source>what the owner said has no answer: %1</source>
        <translation>lo que dijo el dueño no tiene respuesta: %1</translation>
    </message>
</context>
<context>
    <name>CostPage</name>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation>Calcular</translation>
    </message>
    <message>
        <source>Add the line</source>
        <translation>Añadir la línea</translation>
    </message>
    <message>
        <source>Line of the cost</source>
        <translation>Línea del coste</translation>
    </message>
    <message>
        <source>One hour&apos;s work without tax</source>
        <translation>Una hora de trabajo sin impuesto</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Tax, per cent</source>
        <translation>Impuesto, por ciento</translation>
    </message>
    <message>
        <source>Another line</source>
        <translation>Otra línea</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Por qué concepto</translation>
    </message>
    <message>
        <source>tyre fitted outside</source>
        <translation>neumático montado fuera</translation>
    </message>
    <message>
        <source>Sum without tax</source>
        <translation>Importe sin impuesto</translation>
    </message>
    <message>
        <source>take out</source>
        <translation>quitar</translation>
    </message>
</context>
<context>
    <name>CostSum</name>
    <message>
        <source>without tax: %1</source>
        <translation>sin impuesto: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Previsto: %1</translation>
    </message>
    <message>
        <source>It took: %1</source>
        <translation>Llevó: %1</translation>
    </message>
</context>
<context>
    <name>DraftRow</name>
    <message>
        <source>begun %1, not finished</source>
        <translation>empezado %1, sin acabar</translation>
    </message>
    <message>
        <source>%1, begun %2, not finished</source>
        <translation>%1, empezado %2, sin acabar</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Throw away what was typed? It cannot be brought back.</source>
        <translation>¿Tirar lo escrito? No se podrá recuperar.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Tirar</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservar</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Rechecks due</source>
        <translation>Revisiones pendientes</translation>
    </message>
    <message>
        <source>Rechecks with a number of days stand here from the hand-over on.</source>
        <translation>Las revisiones con un número de días están aquí desde la entrega.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nada vence</translation>
    </message>
    <message>
        <source>due</source>
        <translation>vence</translation>
    </message>
</context>
<context>
    <name>FileChooser</name>
    <message>
        <source>Folder above %1</source>
        <translation>Carpeta encima de %1</translation>
    </message>
    <message>
        <source>Looking</source>
        <translation>Buscando</translation>
    </message>
</context>
<context>
    <name>FilesWritten</name>
    <message>
        <source>Written</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Mostrar la carpeta</translation>
    </message>
</context>
<context>
    <name>FindFilters</name>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>every machine</source>
        <translation>todos los vehículos</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Any</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>En el taller</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Salió</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Trabajado</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un año</translation>
    </message>
    <message>
        <source>What kind?</source>
        <translation>¿Qué clase?</translation>
    </message>
    <message>
        <source>Which machine?</source>
        <translation>¿Qué vehículo?</translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Machines that wait for what?</source>
        <translation>¿Vehículos que esperan qué?</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Words, or their beginnings</source>
        <translation>Palabras, o su principio</translation>
    </message>
    <message>
        <source>green pink ring</source>
        <translation>verde rosa anillo</translation>
    </message>
    <message>
        <source>Hide the filters</source>
        <translation>Ocultar los filtros</translation>
    </message>
    <message>
        <source>Filters (in use)</source>
        <translation>Filtros (en uso)</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filtros</translation>
    </message>
    <message>
        <source>Nothing found for these words. Try fewer, or only their beginnings.</source>
        <translation>Nada con esas palabras. Probar con menos, o solo el principio.</translation>
    </message>
</context>
<context>
    <name>FindingPage</name>
    <message>
        <source>New finding</source>
        <translation>Nuevo hallazgo</translation>
    </message>
    <message>
        <source>Correct the finding</source>
        <translation>Corregir el hallazgo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Qué se encontró</translation>
    </message>
    <message>
        <source>front brake hose cracked at the banjo</source>
        <translation>latiguillo delantero agrietado</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>renew the hose, bleed the brake</source>
        <translation>cambiar el latiguillo, purgar el freno</translation>
    </message>
    <message>
        <source>How long it will take, in minutes</source>
        <translation>Cuánto llevará, en minutos</translation>
    </message>
    <message>
        <source>Asked for: %1</source>
        <translation>Se pide: %1</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Hacerlo tarea</translation>
    </message>
    <message>
        <source>Owner says no</source>
        <translation>El dueño dice no</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Not settled yet</source>
        <translation>Aún sin resolver</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Who works here?</source>
        <translation>¿Quién trabaja aquí?</translation>
    </message>
    <message>
        <source>Each entry names who made it. Your name stays on this phone and in the records that you hand over.</source>
        <translation>Cada entrada dice quién la hizo. El nombre queda en este teléfono y en los informes que se entregan.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Tu nombre</translation>
    </message>
    <message>
        <source>as the owner will read it</source>
        <translation>como lo leerá el dueño</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Recuperar un taller</translation>
    </message>
</context>
<context>
    <name>FunctionsPage</name>
    <message>
        <source>What works now</source>
        <translation>Qué funciona ahora</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>No va</translation>
    </message>
    <message>
        <source>Not tried</source>
        <translation>No probado</translation>
    </message>
    <message>
        <source>Everything has its answer.</source>
        <translation>Todo tiene respuesta.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>flickers, only when cold</source>
        <translation>parpadea, solo en frío</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Undercowl controls</source>
        <translation>Controles de Undercowl</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Otro aspecto</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
</context>
<context>
    <name>GatheringActions</name>
    <message>
        <source>Read the wires</source>
        <translation>Leer los cables</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Releer</translation>
    </message>
</context>
<context>
    <name>GatheringForm</name>
    <message>
        <source>Connector</source>
        <translation>Conector</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Loose terminals</source>
        <translation>Terminales sueltos</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Empalme</translation>
    </message>
    <message>
        <source>Shared earth</source>
        <translation>Masa común</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Cómo se llama</translation>
    </message>
    <message>
        <source>right switch cluster</source>
        <translation>piña derecha</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Vías</translation>
    </message>
    <message>
        <source>Number of places</source>
        <translation>Número de vías</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation>Filas de vías</translation>
    </message>
    <message>
        <source>Seen from: the numbers run the other way on the other side</source>
        <translation>Visto desde: en el otro lado los números van al revés</translation>
    </message>
    <message>
        <source>Wire side</source>
        <translation>Lado cables</translation>
    </message>
    <message>
        <source>Mating face</source>
        <translation>Cara de contacto</translation>
    </message>
    <message>
        <source>Latch or key</source>
        <translation>Cierre o guía</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>Condition as found</source>
        <translation>Estado como llegó</translation>
    </message>
    <message>
        <source>two pins green, latch broken</source>
        <translation>dos pines verdes, cierre roto</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>cleaned, contact grease</source>
        <translation>limpiado, grasa de contactos</translation>
    </message>
</context>
<context>
    <name>GatheringMap</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
    <message>
        <source>Tap place 1 on the photo</source>
        <translation>Tocar la vía 1 en la foto</translation>
    </message>
    <message>
        <source>Place 1 is elsewhere</source>
        <translation>La vía 1 está en otro sitio</translation>
    </message>
    <message>
        <source>Mark place 1</source>
        <translation>Marcar la vía 1</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Mitad</translation>
    </message>
    <message>
        <source>Loom</source>
        <translation>Mazo</translation>
    </message>
    <message>
        <source>Switch, lamp or unit</source>
        <translation>Interruptor, lámpara o aparato</translation>
    </message>
</context>
<context>
    <name>GatheringPage</name>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Correct what it is</source>
        <translation>Corregir qué es</translation>
    </message>
    <message>
        <source>The new part</source>
        <translation>El recambio nuevo</translation>
    </message>
    <message>
        <source>Carry the wires over</source>
        <translation>Trasladar los cables</translation>
    </message>
    <message>
        <source>with other connections than the old one</source>
        <translation>con otras conexiones que el viejo</translation>
    </message>
    <message>
        <source>A new part comes in its place</source>
        <translation>En su lugar va un recambio nuevo</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Escribiendo el informe</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Escribiendo</translation>
    </message>
    <message>
        <source>Make the files again</source>
        <translation>Rehacer los archivos</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Hacer el informe</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>See to it</source>
        <translation>Atender</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>To be told at hand-over</source>
        <translation>Para decir en la entrega</translation>
    </message>
    <message>
        <source>brake eased in, holds straight</source>
        <translation>freno asentado, frena recto</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Piezas viejas</translation>
    </message>
    <message>
        <source>given back in a bag</source>
        <translation>devueltas en una bolsa</translation>
    </message>
    <message>
        <source>Waste taken</source>
        <translation>Residuos recogidos</translation>
    </message>
    <message>
        <source>0.9 l oil, old battery</source>
        <translation>0,9 l de aceite, batería vieja</translation>
    </message>
    <message>
        <source>What the owner will read</source>
        <translation>Lo que leerá el dueño</translation>
    </message>
    <message>
        <source>Language of the record</source>
        <translation>Idioma del informe</translation>
    </message>
    <message numerus="yes">
        <source>Not yet: %n to see to above</source>
        <comment>what stops it</comment>
        <translation>
            <numerusform>Todavía no: queda %n por resolver arriba</numerusform>
            <numerusform>Todavía no: quedan %n por resolver arriba</numerusform>
        </translation>
    </message>
    <message>
        <source>Then the record is made with it</source>
        <translation>El informe se hace a la vez</translation>
    </message>
    <message>
        <source>More was said since these files were made: make them again.</source>
        <translation>Desde estos archivos se ha dicho más: hazlos de nuevo.</translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation>aún sin firmar</translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <comment>what asks</comment>
        <translation>
            <numerusform>%1, y %n más</numerusform>
            <numerusform>%1, y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand it over all the same</source>
        <translation>Entregar de todos modos</translation>
    </message>
</context>
<context>
    <name>HardwareEntry</name>
    <message>
        <source>screw</source>
        <translation>tornillo</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>perno</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>tuerca</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>arandela</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>grapa</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pasador</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Longitud, mm</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>flange nut</source>
        <translation>tuerca con arandela</translation>
    </message>
    <message>
        <source>Its thread</source>
        <translation>Su rosca</translation>
    </message>
    <message>
        <source>Its length, mm</source>
        <translation>Su longitud, mm</translation>
    </message>
    <message>
        <source>from the machine&apos;s manual; N.m unless another unit is typed</source>
        <translation>del manual del vehículo; N.m si no se escribe otra unidad</translation>
    </message>
    <message>
        <source>Torque on refit</source>
        <translation>Par de apriete</translation>
    </message>
</context>
<context>
    <name>HardwarePlaces</name>
    <message>
        <source>With a photo of this step, a tap on it shows later which hole each piece belongs to.</source>
        <translation>Con una foto de este paso, un toque en ella muestra luego en qué agujero va cada pieza.</translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation>Aún sin foto</translation>
    </message>
    <message>
        <source>Photo to tap on: where it sits</source>
        <translation>Foto que tocar: dónde va</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Otra foto</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Quitar de la lista</translation>
    </message>
</context>
<context>
    <name>HeardReading</name>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>front tyre, pressure</source>
        <translation>neumático delantero, presión</translation>
    </message>
    <message>
        <source>rear tyre, pressure</source>
        <translation>neumático trasero, presión</translation>
    </message>
    <message>
        <source>battery, voltage</source>
        <translation>batería, tensión</translation>
    </message>
    <message>
        <source>tread, depth</source>
        <translation>dibujo, profundidad</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>In the shop</source>
        <translation>En el taller</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Take in the first machine: what it is, whose it is, why it is here.</source>
        <translation>Recibir el primer vehículo: qué es, de quién es, por qué está aquí.</translation>
    </message>
    <message>
        <source>The shop is empty</source>
        <translation>El taller está vacío</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Machines handed over before these are found by Find.</source>
        <translation>Los entregados antes de estos se encuentran con Buscar.</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Revisiones pendientes</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Recuperar un taller</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name, as the shop calls it</source>
        <translation>Nombre, como se le llama en el taller</translation>
    </message>
    <message>
        <source>wrench red</source>
        <translation>llave roja</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>Choose the kind</source>
        <translation>Elegir la clase</translation>
    </message>
    <message>
        <source>Largest reading, with its unit</source>
        <translation>Mayor lectura, con su unidad</translation>
    </message>
    <message>
        <source>Least reading</source>
        <translation>Menor lectura</translation>
    </message>
    <message>
        <source>One division, or the last digit</source>
        <translation>Una división, o la última cifra</translation>
    </message>
    <message>
        <source>Type and class by ISO 6789-1</source>
        <translation>Tipo y clase según ISO 6789-1</translation>
    </message>
    <message>
        <source>Class by EN 837-1, as on the dial</source>
        <translation>Clase según EN 837-1, como en la esfera</translation>
    </message>
    <message>
        <source>Limit of error: per cent of the reading</source>
        <translation>Límite de error: por ciento de la lectura</translation>
    </message>
    <message>
        <source>and digits</source>
        <translation>y dígitos</translation>
    </message>
    <message>
        <source>and a fixed part</source>
        <translation>y una parte fija</translation>
    </message>
    <message>
        <source>Feel of the hand: half of what two people read differently</source>
        <translation>Tacto de la mano: la mitad de lo que dos personas leen distinto</translation>
    </message>
    <message>
        <source>Where the limit of error stands</source>
        <translation>Dónde consta el límite de error</translation>
    </message>
    <message>
        <source>maker&apos;s sheet</source>
        <translation>hoja del fabricante</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Calibrado el</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Toca de nuevo el</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Clase de instrumento</translation>
    </message>
</context>
<context>
    <name>InstrumentPage</name>
    <message>
        <source>New instrument</source>
        <translation>Nuevo instrumento</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Use it again</source>
        <translation>Usarlo otra vez</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ya no se usa</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Añadir un instrumento</translation>
    </message>
    <message>
        <source>An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones with assumed limits can be chosen.</source>
        <translation>Un instrumento con su límite de error da el veredicto a las lecturas. Hasta que el taller tenga los suyos se pueden elegir corrientes con límites supuestos.</translation>
    </message>
    <message>
        <source>No instruments of the shop yet</source>
        <translation>Aún sin instrumentos del taller</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ya no se usa</translation>
    </message>
</context>
<context>
    <name>JobActions</name>
    <message>
        <source>Photos as found</source>
        <translation>Fotos como llegó</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Montar</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
</context>
<context>
    <name>JobMemos</name>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>the third bolt is the longer one</source>
        <translation>el tercer tornillo es más largo</translation>
    </message>
    <message>
        <source>Keep the memo</source>
        <translation>Guardar la nota</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Unsafe and open: %1</source>
        <translation>Peligro sin resolver: %1</translation>
    </message>
    <message>
        <source>Came back: the job before</source>
        <translation>Volvió: la orden anterior</translation>
    </message>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>%n por hacer</numerusform>
            <numerusform>%n por hacer</numerusform>
        </translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Después: ajustar, purgar, probar</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Photos as found, view by view</source>
        <translation>Fotos como llegó, vista por vista</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n pendiente</numerusform>
            <numerusform>%n pendientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>The owner&apos;s word on the cost</source>
        <translation>La palabra del dueño sobre el coste</translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n por llegar</numerusform>
            <numerusform>%n por llegar</numerusform>
        </translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>What the shop knows of this model</source>
        <translation>Qué sabe el taller de este modelo</translation>
    </message>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidos y grasa</translation>
    </message>
    <message>
        <source>Machine and owner</source>
        <translation>Vehículo y dueño</translation>
    </message>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiquetas para las bolsas</translation>
    </message>
    <message>
        <source>In the bags</source>
        <translation>En las bolsas</translation>
    </message>
    <message>
        <source>here: %1</source>
        <translation>llegó: %1</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>falta %n</numerusform>
            <numerusform>faltan %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
</context>
<context>
    <name>JobRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
</context>
<context>
    <name>JobTasks</name>
    <message>
        <source>Tasks</source>
        <translation>Tareas</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>del</source>
        <comment>erases the last digit</comment>
        <translation>borr</translation>
    </message>
</context>
<context>
    <name>KnowledgePage</name>
    <message>
        <source>Write the file for other shops</source>
        <translation>Escribir el archivo para otros talleres</translation>
    </message>
    <message>
        <source>A touch takes a line over into the open job. Nothing enters it by itself.</source>
        <translation>Un toque lleva una línea a la orden abierta. Nada entra solo.</translation>
    </message>
    <message>
        <source>Open a job of this model to take lines over.</source>
        <translation>Abrir una orden de este modelo para llevar líneas.</translation>
    </message>
    <message>
        <source>Written, without anything of any owner: %1</source>
        <translation>Escrito, sin nada de ningún dueño: %1</translation>
    </message>
    <message>
        <source>Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.</source>
        <translation>Aquí estarán límites, pares, recambios que valieron o no, planos de cables y tiempos de otras órdenes.</translation>
    </message>
    <message>
        <source>Nothing known of this model yet</source>
        <translation>Aún no se sabe nada de este modelo</translation>
    </message>
    <message>
        <source>take</source>
        <translation>llevar</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiquetas para las bolsas</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Hacer la hoja</translation>
    </message>
    <message>
        <source>Steps that were bagged while stripping stand here.</source>
        <translation>Aquí están los pasos embolsados al desmontar.</translation>
    </message>
    <message>
        <source>No bags yet</source>
        <translation>Aún sin bolsas</translation>
    </message>
    <message>
        <source>Written: %1. Print it at 100 %.</source>
        <translation>Escrito: %1. Imprimir al 100 %.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>A4, 3 × 8</source>
        <translation>A4, 3 × 8</translation>
    </message>
    <message>
        <source>Letter, 3 × 10</source>
        <translation>Letter, 3 × 10</translation>
    </message>
    <message>
        <source>Place of the first label</source>
        <translation>Sitio de la primera etiqueta</translation>
    </message>
</context>
<context>
    <name>LimitsEntry</name>
    <message>
        <source>What was measured</source>
        <translation>Qué se midió</translation>
    </message>
    <message>
        <source>rear axle nut, torque</source>
        <translation>tuerca del eje trasero, par</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>número solo</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Los instrumentos del taller</translation>
    </message>
    <message>
        <source>At least, %1</source>
        <translation>Al menos, %1</translation>
    </message>
    <message>
        <source>At most, %1</source>
        <translation>Como mucho, %1</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>De dónde vienen los límites</translation>
    </message>
    <message>
        <source>Page or place</source>
        <translation>Página o lugar</translation>
    </message>
    <message>
        <source>page 7-12</source>
        <translation>página 7-12</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
</context>
<context>
    <name>LineBackPage</name>
    <message>
        <source>Hoses and cables</source>
        <translation>Tubos y cables</translation>
    </message>
    <message>
        <source>Ends only</source>
        <translation>Solo extremos</translation>
    </message>
    <message>
        <source>Says where its ends sit, alone</source>
        <translation>Dice solo dónde van sus extremos</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Leer en silencio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>A strip step is a hose, vent or cable when its title says so, or when you wrote down where its ends sit.</source>
        <translation>Un paso de desmontaje es un tubo, un respiradero o un cable si lo dice su título o si anotaste dónde van sus extremos.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Nada que releer</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto de %1 al desmontar</translation>
    </message>
    <message>
        <source>Its step is not refitted yet.</source>
        <translation>El paso aún no está montado.</translation>
    </message>
    <message>
        <source>%1 of %2 run as they did</source>
        <translation>%1 de %2 van como antes</translation>
    </message>
    <message>
        <source>Each was seen where it runs and where it ends.</source>
        <translation>De cada uno se vio por dónde va y dónde acaba.</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Estos no coinciden. Arréglalos y vuelve a leerlos:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Estos no se han releído:</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Se han releído todos. Vuelve al que no coincide.</translation>
    </message>
</context>
<context>
    <name>ListRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
</context>
<context>
    <name>LockBar</name>
    <message>
        <source>Now the button above, in the other corner.</source>
        <translation>Ahora el botón de arriba, en la otra esquina.</translation>
    </message>
    <message>
        <source>Locked. What is touched here does nothing; speaking works.</source>
        <translation>Bloqueado. Tocar no hace nada; hablar sí.</translation>
    </message>
    <message>
        <source>The first of two touches</source>
        <translation>El primero de dos toques</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Desbloquear</translation>
    </message>
    <message>
        <source>The second of two touches</source>
        <translation>El segundo de dos toques</translation>
    </message>
    <message>
        <source>Unlock now</source>
        <translation>Sí, desbloquear</translation>
    </message>
</context>
<context>
    <name>LookOverPage</name>
    <message>
        <source>Look over</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Photo as found</source>
        <translation>Foto como llegó</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.</source>
        <translation>Frenos, neumáticos, juego de dirección, fugas, cables: anotar lo que no está como debe.</translation>
    </message>
    <message>
        <source>Nothing found yet</source>
        <translation>Aún nada encontrado</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
</context>
<context>
    <name>MeasureActions</name>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Keep mean</source>
        <translation>Guardar la media</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>What and how</source>
        <translation>Qué y con qué</translation>
    </message>
    <message>
        <source>To the value</source>
        <translation>Al valor</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Lecturas hasta ahora</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>at: %1 · %2</source>
        <translation>en: %1 · %2</translation>
    </message>
    <message>
        <source>What is measured?</source>
        <translation>¿Qué se mide?</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Desarrollo</translation>
    </message>
</context>
<context>
    <name>MeasureValue</name>
    <message>
        <source>Value in %1</source>
        <translation>Valor en %1</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia la unidad</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
</context>
<context>
    <name>MeasureWorking</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>una de varias; tocar para quitarla</translation>
    </message>
    <message>
        <source>Nothing to show: no value, or no limits.</source>
        <translation>Nada que mostrar: ningún valor o ningún límite.</translation>
    </message>
</context>
<context>
    <name>Measuring</name>
    <message>
        <source>at rest</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>al ralentí</translation>
    </message>
    <message>
        <source>at revs</source>
        <translation>con revoluciones</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the value on the keypad.</source>
        <translation>Escribir el valor en las teclas.</translation>
    </message>
    <message>
        <source>Say where the limits come from.</source>
        <translation>Decir de dónde vienen los límites.</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>número solo</translation>
    </message>
    <message>
        <source>Type what was measured, such as &quot;rear axle nut, torque&quot;.</source>
        <translation>Escribir qué se midió, por ejemplo &quot;tuerca del eje trasero, par&quot;.</translation>
    </message>
    <message>
        <source>%1, torque</source>
        <translation>%1, par</translation>
    </message>
    <message>
        <source>to be %1, as the step says</source>
        <translation>debe ser %1, según el paso</translation>
    </message>
    <message>
        <source>next after: %1</source>
        <translation>tras: %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>&quot;At least&quot; %1 is above &quot;At most&quot; %2, so that no value fits: change one of the two.</source>
        <translation>«Al menos» %1 está por encima de «Como mucho» %2, así ningún valor cabe: cambia uno de los dos.</translation>
    </message>
</context>
<context>
    <name>MemoMeter</name>
    <message>
        <source>Recording, %1</source>
        <translation>Grabando, %1</translation>
    </message>
    <message>
        <source>marks: %1</source>
        <translation>marcas: %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note to a photo</source>
        <translation>Nota a una foto</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a esta foto</translation>
    </message>
    <message>
        <source>the third bolt is the longer one</source>
        <translation>el tercer tornillo es más largo</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Guardadas hasta ahora</translation>
    </message>
</context>
<context>
    <name>Memos</name>
    <message>
        <source>photo, %1</source>
        <translation>foto, %1</translation>
    </message>
    <message>
        <source>Spoken memo</source>
        <translation>Nota hablada</translation>
    </message>
    <message>
        <source>Memo kept</source>
        <translation>Nota guardada</translation>
    </message>
</context>
<context>
    <name>ModelsPage</name>
    <message>
        <source>What the shop knows</source>
        <translation>Qué sabe el taller</translation>
    </message>
    <message>
        <source>Learn from the file</source>
        <translation>Aprender del archivo</translation>
    </message>
    <message>
        <source>Learn from another shop</source>
        <translation>Aprender de otro taller</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Aprendido: %1</translation>
    </message>
    <message>
        <source>Its file</source>
        <translation>Su archivo</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>What the shop knows</source>
        <translation>Qué sabe el taller</translation>
    </message>
    <message>
        <source>Scan a bag or a part</source>
        <translation>Escanear bolsa o recambio</translation>
    </message>
    <message>
        <source>Spreadsheets in and out</source>
        <translation>Hojas de cálculo</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Revisiones pendientes</translation>
    </message>
</context>
<context>
    <name>NeedsPage</name>
    <message>
        <source>To put it back</source>
        <translation>Para montarlo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>New every time, one a line</source>
        <translation>Nuevo cada vez, uno por línea</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>pasador de aletas</translation>
    </message>
    <message>
        <source>What goes on it</source>
        <translation>Qué lleva</translation>
    </message>
    <message>
        <source>grease, thread lock, none</source>
        <translation>grasa, fijador de roscas, nada</translation>
    </message>
    <message>
        <source>To adjust, bleed or try afterwards, one a line</source>
        <translation>Por ajustar, purgar o probar después, uno por línea</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>purgar el freno hasta que la maneta quede dura</translation>
    </message>
    <message>
        <source>Do not start until it is done</source>
        <translation>No arrancar antes de hacerlo</translation>
    </message>
    <message>
        <source>Do not ride until it is done</source>
        <translation>No circular antes de hacerlo</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
</context>
<context>
    <name>NeedsPanel</name>
    <message>
        <source>Nothing follows from the words of the step. Look in the manual.</source>
        <translation>De las palabras del paso no sale nada. Mirar el manual.</translation>
    </message>
    <message>
        <source>Suggested by the words of the step: common practice. The manual comes first.</source>
        <translation>Propuesto por las palabras del paso: práctica común. El manual va primero.</translation>
    </message>
    <message>
        <source>To put it back</source>
        <translation>Para montarlo</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Nuevo: %1</translation>
    </message>
    <message>
        <source>Goes on it: %1</source>
        <translation>Lleva: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>As you set it.</source>
        <translation>Como lo pusiste tú.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
</context>
<context>
    <name>OrdersPage</name>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copiar la lista</translation>
    </message>
    <message>
        <source>Text, spreadsheet, PDF</source>
        <translation>Texto, hoja, PDF</translation>
    </message>
    <message>
        <source>Parts that are wanted or asked for stand here until they are ordered.</source>
        <translation>Los recambios deseados o consultados están aquí hasta que se piden.</translation>
    </message>
    <message>
        <source>Nothing to order</source>
        <translation>Nada por pedir</translation>
    </message>
</context>
<context>
    <name>OwnersAnswer</name>
    <message>
        <source>Who said so</source>
        <translation>Quién lo dijo</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Water and stray touches do nothing then</source>
        <translation>El agua y los toques sin querer no hacen nada entonces</translation>
    </message>
    <message>
        <source>Lock the screen</source>
        <translation>Bloquear la pantalla</translation>
    </message>
    <message>
        <source>More on this page</source>
        <translation>Más en esta página</translation>
    </message>
</context>
<context>
    <name>PartPage</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de él</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Other makers&apos; numbers</source>
        <translation>Números de otros fabricantes</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Precio sin impuesto</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>nada elegido</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué es</translation>
    </message>
    <message>
        <source>Does it fit this model?</source>
        <translation>¿Vale para este modelo?</translation>
    </message>
    <message>
        <source>Why not, or after what change</source>
        <translation>Por qué no, o tras qué cambio</translation>
    </message>
    <message>
        <source>pivot hole 1 mm too small</source>
        <translation>agujero del eje 1 mm pequeño</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>from the dealer, by Friday</source>
        <translation>del concesionario, el viernes</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>¿Para qué es?</translation>
    </message>
    <message>
        <source>Old one beside the new one</source>
        <translation>El viejo junto al nuevo</translation>
    </message>
    <message>
        <source>Old and new part side by side</source>
        <translation>Pieza vieja y nueva lado a lado</translation>
    </message>
</context>
<context>
    <name>PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>Add the part</source>
        <translation>Añadir el recambio</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>Another part</source>
        <translation>Otro recambio</translation>
    </message>
    <message>
        <source>switch cluster, right</source>
        <translation>piña derecha</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>from the dealer, by Friday</source>
        <translation>del concesionario, el viernes</translation>
    </message>
    <message>
        <source>Supplier, price, fit …</source>
        <translation>Proveedor, precio …</translation>
    </message>
    <message>
        <source>What became of it?</source>
        <translation>¿Qué fue de él?</translation>
    </message>
</context>
<context>
    <name>PhotoFrame</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>This photo cannot be shown. Its file may be damaged.</source>
        <translation>Esta foto no se puede mostrar. Quizá su archivo esté dañado.</translation>
    </message>
    <message>
        <source>Loading photo</source>
        <translation>Cargando la foto</translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>Closer</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Entera</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>PicturePicker</name>
    <message>
        <source>Folder above %1</source>
        <translation>Carpeta encima de %1</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Buscando imágenes</translation>
    </message>
    <message>
        <source>No pictures here</source>
        <translation>Aquí no hay imágenes</translation>
    </message>
</context>
<context>
    <name>PlaceDetails</name>
    <message>
        <source>terminal</source>
        <translation>terminal</translation>
    </message>
    <message>
        <source>Size of the terminal, mm</source>
        <translation>Tamaño del terminal, mm</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué es</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>luz de freno</translation>
    </message>
    <message>
        <source>terminal number by DIN 72552</source>
        <translation>número de borne DIN 72552</translation>
    </message>
    <message>
        <source>No number</source>
        <translation>Sin número</translation>
    </message>
    <message>
        <source>Size of the wire, mm²</source>
        <translation>Sección del cable, mm²</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Terminal</translation>
    </message>
    <message>
        <source>Terminal number by DIN 72552</source>
        <translation>Número de borne DIN 72552</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>como debe ser</translation>
    </message>
    <message>
        <source>Nothing there</source>
        <translation>Ahí no hay nada</translation>
    </message>
    <message>
        <source>Another colour</source>
        <translation>Otro color</translation>
    </message>
    <message>
        <source>Pick the colour</source>
        <translation>Elegir el color</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Which answer</source>
        <translation>Qué respuesta</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como llegó</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Como debe ser</translation>
    </message>
    <message>
        <source>As found: %1. As it should be: %2.</source>
        <translation>Como llegó: %1. Como debe ser: %2.</translation>
    </message>
    <message>
        <source>Where that is known from</source>
        <translation>De dónde se sabe</translation>
    </message>
    <message>
        <source>manual, page 7-12</source>
        <translation>manual, página 7-12</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>As refitted: %1</source>
        <translation>Al montar: %1</translation>
    </message>
</context>
<context>
    <name>PlaceRow</name>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
</context>
<context>
    <name>Plugin</name>
    <message>
        <source>A part of this program is missing or damaged (%1). Install it again; what is kept in the shop stays as it is.</source>
        <translation>Falta o está dañada una parte del programa (%1). Instalarlo otra vez; lo guardado en el taller queda como está.</translation>
    </message>
</context>
<context>
    <name>Pressable</name>
    <message>
        <source>Working</source>
        <translation>En curso</translation>
    </message>
</context>
<context>
    <name>ProblemPanel</name>
    <message>
        <source>Try again</source>
        <translation>Probar otra vez</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Recuperar un taller</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>ProofsPage</name>
    <message>
        <source>To be proved</source>
        <translation>Por probar</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n proved</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>Guardar %n probado</numerusform>
            <numerusform>Guardar %n probados</numerusform>
        </translation>
    </message>
    <message>
        <source>Touch what works</source>
        <translation>Tocar lo que funciona</translation>
    </message>
    <message>
        <source>One by one, or leave out</source>
        <translation>Uno a uno, o dejar</translation>
    </message>
    <message>
        <source>measure it</source>
        <translation>medir</translation>
    </message>
    <message>
        <source>read it back</source>
        <translation>releer</translation>
    </message>
    <message>
        <source>works</source>
        <translation>funciona</translation>
    </message>
    <message>
        <source>touch when it works</source>
        <translation>tocar cuando funcione</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering, and what keeps it standing</source>
        <translation>Frenos, ruedas, dirección y lo que lo mantiene en pie</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>El resto</translation>
    </message>
    <message>
        <source>How, for those that are ticked</source>
        <translation>Cómo, en los marcados</translation>
    </message>
    <message>
        <source>tried on the lift, then on the yard</source>
        <translation>probado en el elevador, luego en el patio</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n sin montar: aún no se puede probar</numerusform>
            <numerusform>%n sin montar: aún no se pueden probar</numerusform>
        </translation>
    </message>
    <message>
        <source>Have their answer</source>
        <translation>Con respuesta</translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message>
        <source>Prove</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Probado</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>What is taken apart and put together again is proved here.</source>
        <translation>Aquí se prueba lo desmontado y vuelto a montar.</translation>
    </message>
    <message>
        <source>Nothing was disturbed</source>
        <translation>No se tocó nada</translation>
    </message>
    <message>
        <source>Everything that was disturbed is proved, or left out for a reason.</source>
        <translation>Todo lo tocado está probado, o dejado con motivo.</translation>
    </message>
    <message>
        <source>How, or why it is left out</source>
        <translation>Cómo, o por qué se deja</translation>
    </message>
    <message>
        <source>read aloud and matched</source>
        <translation>releído en voz alta y coincide</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n sin montar: aún no se puede probar</numerusform>
            <numerusform>%n sin montar: aún no se pueden probar</numerusform>
        </translation>
    </message>
    <message>
        <source>A second pair of eyes</source>
        <translation>Otro par de ojos</translation>
    </message>
    <message>
        <source>What works now, beside what worked before</source>
        <translation>Qué funciona ahora, junto a lo de antes</translation>
    </message>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prueba en carretera y revisiones</translation>
    </message>
    <message>
        <source>Read it back</source>
        <translation>Releer</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Medir</translation>
    </message>
    <message numerus="yes">
        <source>%n without an answer</source>
        <comment>complaints and functions</comment>
        <translation>
            <numerusform>%n sin respuesta</numerusform>
            <numerusform>%n sin respuesta</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadBackActions</name>
    <message>
        <source>Does not match</source>
        <translation>No coincide</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Saltar</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the one before</comment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Begins with the first one again</source>
        <translation>Empieza otra vez por el primero</translation>
    </message>
    <message>
        <source>To the next one; nothing is said of this one</source>
        <translation>Al siguiente; de este no se dice nada</translation>
    </message>
    <message>
        <source>Matches</source>
        <translation>Coincide</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
</context>
<context>
    <name>ReadBackBefore</name>
    <message>
        <source>checked before: matches</source>
        <translation>ya comprobado: coincide</translation>
    </message>
    <message>
        <source>checked before: does not match</source>
        <translation>ya comprobado: no coincide</translation>
    </message>
</context>
<context>
    <name>ReadBackChoice</name>
    <message>
        <source>Stop: the two answers differ. Which one holds?</source>
        <translation>Alto: las dos respuestas difieren. ¿Cuál vale?</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ReadBackEnd</name>
    <message>
        <source>Finish</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Compare photos</source>
        <translation>Comparar fotos</translation>
    </message>
</context>
<context>
    <name>ReadBackMismatch</name>
    <message>
        <source>Written down: %1 does not match.</source>
        <translation>Anotado: %1 no coincide.</translation>
    </message>
    <message>
        <source>Swapped</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>¿Cambiado con cuál?</translation>
    </message>
    <message>
        <source>Next one</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Read silently</source>
        <translation>Leer en silencio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>Read the unit half</source>
        <translation>Leer el lado aparato</translation>
    </message>
    <message>
        <source>Read the loom half</source>
        <translation>Leer el lado mazo</translation>
    </message>
    <message>
        <source>No wire of the loom half was confirmed when it was stripped.</source>
        <translation>Al desmontar no se confirmó ningún cable del lado mazo.</translation>
    </message>
    <message>
        <source>No wire of the unit half was confirmed when it was stripped.</source>
        <translation>Al desmontar no se confirmó ningún cable del lado aparato.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Nada que releer</translation>
    </message>
    <message>
        <source>%1 of %2 wires match</source>
        <translation>%1 de %2 cables coinciden</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Cada cable se vio en su sitio.</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Solo el cable</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Dice solo su color</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Estos no coinciden. Arréglalos y vuelve a leerlos:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Estos no se han releído:</translation>
    </message>
    <message>
        <source>The two answers differ. Touch the one that holds.</source>
        <translation>Las dos respuestas difieren. Toca la que vale.</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Se han releído todos. Vuelve al que no coincide.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 marcada</translation>
    </message>
</context>
<context>
    <name>ReadingRow</name>
    <message>
        <source>no verdict</source>
        <translation>sin veredicto</translation>
    </message>
    <message>
        <source>Shows the curve of its readings</source>
        <translation>Muestra la curva de sus lecturas</translation>
    </message>
    <message>
        <source>no verdict: limits or the instrument&apos;s uncertainty are not known</source>
        <translation>sin veredicto: no se conocen los límites o la incertidumbre del instrumento</translation>
    </message>
    <message>
        <source>Measured once so far: a second reading makes a curve.</source>
        <translation>Medido una vez: con una segunda lectura hay curva.</translation>
    </message>
    <message>
        <source>It does not count any more, and can be brought back</source>
        <translation>Ya no cuenta, y se puede recuperar</translation>
    </message>
    <message>
        <source>This reading was a mistake</source>
        <translation>Esta lectura fue un error</translation>
    </message>
</context>
<context>
    <name>ReadingsPage</name>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Each value that is kept stands here with its limits and its verdict.</source>
        <translation>Cada valor guardado está aquí con sus límites y su veredicto.</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Aún nada medido</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>%1 of %2 back together</source>
        <translation>%1 de %2 montados</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2, unit side</source>
        <translation>%1 a %2, lado aparato</translation>
    </message>
    <message>
        <source>%1 waits for: %2.</source>
        <translation>%1 espera: %2.</translation>
    </message>
    <message>
        <source>%1, also %2</source>
        <translation>%1, también %2</translation>
    </message>
    <message>
        <source>%1, at: %2</source>
        <translation>%1, en: %2</translation>
    </message>
    <message>
        <source>%1, mean of %2 (%3)</source>
        <translation>%1, media de %2 (%3)</translation>
    </message>
    <message>
        <source>%1, second wire</source>
        <translation>%1, segundo cable</translation>
    </message>
    <message>
        <source>%1, unit side</source>
        <translation>%1, lado aparato</translation>
    </message>
    <message>
        <source>%1, unit side, second wire</source>
        <translation>%1, lado aparato, segundo cable</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation>%1, con error de %2</translation>
    </message>
    <message>
        <source>%1: %2, %3 places</source>
        <translation>%1: %2, %3 vías</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3</source>
        <translation>%1: conector de %2 vías, numeradas vistas desde: %3</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3; latch: %4</source>
        <translation>%1: conector de %2 vías, numeradas vistas desde: %3; cierre: %4</translation>
    </message>
    <message>
        <source>A wheel or its axle was worked on: have its fastening checked again after the first rides.</source>
        <translation>Se trabajó en una rueda o su eje: hacer revisar su apriete tras las primeras salidas.</translation>
    </message>
    <message>
        <source>A wire was found that does not match the map: %1, place %2.</source>
        <translation>Se encontró un cable que no coincide con el plano: %1, vía %2.</translation>
    </message>
    <message>
        <source>Agreed before: %1</source>
        <translation>Acordado antes: %1</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Before you ride</source>
        <translation>Antes de circular</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Colours are those seen on this machine, by IEC 60757 letters (LBU, LGN: light blue and light green).</source>
        <translation>Los colores son los vistos en este vehículo, en letras de IEC 60757 (LBU, LGN: azul claro y verde claro).</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Did not work</source>
        <translation>No funcionaba</translation>
    </message>
    <message>
        <source>Do not ride it: %1 is not on again.</source>
        <translation>No circular: %1 no está montado.</translation>
    </message>
    <message>
        <source>Do not start it: %1 is not on again.</source>
        <translation>No arrancarlo: %1 no está montado.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Extremo</translation>
    </message>
    <message>
        <source>Expected: %1 minutes; it took %2.</source>
        <translation>Previsto: %1 minutos; llevó %2.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Número de bastidor</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Llaves y papeles recibidos</translation>
    </message>
    <message>
        <source>Left out, do not ride before it is done: %1 (%2).</source>
        <translation>Dejado, no circular antes de hacerlo: %1 (%2).</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Limit from</source>
        <translation>Límite según</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Measured outside its limit: %1, %2.</source>
        <translation>Medido fuera de su límite: %1, %2.</translation>
    </message>
    <message>
        <source>Measured values hold for the day on which they were measured.</source>
        <translation>Los valores medidos valen para el día en que se midieron.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>No supplier chosen</source>
        <translation>Sin proveedor elegido</translation>
    </message>
    <message>
        <source>No unsafe finding is open.</source>
        <translation>Ningún peligro pendiente.</translation>
    </message>
    <message>
        <source>Not back together: %1 (bag %2).</source>
        <translation>Sin montar: %1 (bolsa %2).</translation>
    </message>
    <message>
        <source>Not back together: %1.</source>
        <translation>Sin montar: %1.</translation>
    </message>
    <message>
        <source>Not done yet, do not ride before it is: %1.</source>
        <translation>Aún sin hacer, no circular antes: %1.</translation>
    </message>
    <message>
        <source>Note at hand-over</source>
        <translation>Nota en la entrega</translation>
    </message>
    <message>
        <source>Nothing that was taken apart was left apart.</source>
        <translation>Nada de lo desmontado quedó desmontado.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Odometer when taken in</source>
        <translation>Cuentakilómetros al llegar</translation>
    </message>
    <message>
        <source>Old parts: %1</source>
        <translation>Piezas viejas: %1</translation>
    </message>
    <message>
        <source>On refit</source>
        <translation>Al montar</translation>
    </message>
    <message>
        <source>Other steps</source>
        <translation>Otros pasos</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Otro trabajo</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>Parts to order, %1</source>
        <translation>Recambios por pedir, %1</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Vía</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3 (%4).</source>
        <translation>Vía %1: hallada con %2, pero debería ser %3 (%4).</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3.</source>
        <translation>Vía %1: hallada con %2, pero debería ser %3.</translation>
    </message>
    <message>
        <source>Place %1: found with %2, refitted with %3.</source>
        <translation>Vía %1: hallada con %2, montada con %3.</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>Téngase en cuenta</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Precio sin impuesto</translation>
    </message>
    <message>
        <source>Record of work</source>
        <translation>Informe de trabajo</translation>
    </message>
    <message>
        <source>Record of work %1</source>
        <translation>Informe de trabajo %1</translation>
    </message>
    <message>
        <source>Ridden at</source>
        <translation>Circula a</translation>
    </message>
    <message>
        <source>Road test, %1</source>
        <translation>Prueba en carretera, %1</translation>
    </message>
    <message>
        <source>Road test, %1: %2</source>
        <translation>Prueba en carretera, %1: %2</translation>
    </message>
    <message>
        <source>Road test: %1</source>
        <translation>Prueba en carretera: %1</translation>
    </message>
    <message>
        <source>Second pair of eyes</source>
        <translation>Otro par de ojos</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Tax, %1 %</source>
        <translation>Impuesto, %1 %</translation>
    </message>
    <message>
        <source>The brakes were worked on: try them at walking pace before you ride among others.</source>
        <translation>Se trabajó en los frenos: probarlos al paso antes de circular con tráfico.</translation>
    </message>
    <message>
        <source>The machine</source>
        <translation>El vehículo</translation>
    </message>
    <message>
        <source>The machine&apos;s manual, local law and licensed practice come before anything on this page.</source>
        <translation>El manual del vehículo, la ley local y la buena práctica profesional van antes que todo lo de esta página.</translation>
    </message>
    <message>
        <source>The work is not finished: %1 of %2 steps are not back together. Do not ride it.</source>
        <translation>El trabajo no está acabado: %1 de %2 pasos sin montar. No circular.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation>Total: %1</translation>
    </message>
    <message>
        <source>Too close to its limit to call: %1, %2.</source>
        <translation>Demasiado cerca del límite para decidir: %1, %2.</translation>
    </message>
    <message>
        <source>Unsafe and not put right: %1. You were told, and on %2 %3 did not want it put right. Do not ride it.</source>
        <translation>Peligro sin reparar: %1. Se le avisó, y el %2 %3 no quiso repararlo. No circular.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1.</source>
        <translation>Peligro aún sin reparar: %1.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1. To do: %2.</source>
        <translation>Peligro aún sin reparar: %1. Por hacer: %2.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Waste taken: %1</source>
        <translation>Residuos recogidos: %1</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de ello</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Qué toca</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Qué se encontró</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Qué quedó</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Qué se midió</translation>
    </message>
    <message>
        <source>What was proved</source>
        <translation>Qué se probó</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>When it came in</source>
        <translation>Al llegar</translation>
    </message>
    <message>
        <source>Why it came in</source>
        <translation>Por qué vino</translation>
    </message>
    <message>
        <source>Wiring that was read</source>
        <translation>Cables leídos</translation>
    </message>
    <message>
        <source>Without a price: %1</source>
        <translation>Sin precio: %1</translation>
    </message>
    <message>
        <source>Without tax</source>
        <translation>Sin impuesto</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Work done by</source>
        <translation>Trabajo hecho por</translation>
    </message>
    <message>
        <source>Worked when taken in</source>
        <translation>Funcionaba al llegar</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>tras %1</translation>
    </message>
    <message>
        <source>after %1, or by %2, whichever comes first</source>
        <translation>tras %1, o para el %2, lo que llegue antes</translation>
    </message>
    <message>
        <source>after refitting, %1</source>
        <translation>tras montar, %1</translation>
    </message>
    <message>
        <source>after, %1</source>
        <translation>después, %1</translation>
    </message>
    <message>
        <source>all %1 back together</source>
        <translation>los %1 montados</translation>
    </message>
    <message>
        <source>also %1</source>
        <translation>también %1</translation>
    </message>
    <message>
        <source>and %1 more steps.</source>
        <translation>y %1 pasos más.</translation>
    </message>
    <message>
        <source>as found, %1</source>
        <translation>como llegó, %1</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>consultado</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>at the next visit</source>
        <translation>en la próxima visita</translation>
    </message>
    <message>
        <source>before, %1</source>
        <translation>antes, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>para el %1</translation>
    </message>
    <message>
        <source>finding, %1</source>
        <translation>hallazgo, %1</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montado</translation>
    </message>
    <message>
        <source>here, not fitted</source>
        <translation>llegado, sin montar</translation>
    </message>
    <message>
        <source>no limit known</source>
        <translation>no se sabe el límite</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>sin veredicto</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>sin empezar</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>sin comprobar</translation>
    </message>
    <message>
        <source>not named, taken to be within %1</source>
        <translation>sin nombrar, se supone error de %1</translation>
    </message>
    <message>
        <source>not read: look at the machine</source>
        <translation>sin leer: mirar en el vehículo</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>no probado</translation>
    </message>
    <message>
        <source>not yet: this page shows how far the work has got</source>
        <translation>aún no: esta página muestra hasta dónde llega el trabajo</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>reparado</translation>
    </message>
    <message>
        <source>put right: %1</source>
        <translation>reparado: %1</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>firmado por %1, %2</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>aún pendiente</translation>
    </message>
    <message>
        <source>still open; %1 does not want it put right</source>
        <translation>aún pendiente; %1 no quiere que se repare</translation>
    </message>
    <message>
        <source>still open; to do: %1</source>
        <translation>aún pendiente; por hacer: %1</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>espera: %1</translation>
    </message>
    <message>
        <source>waits for: %1; %2 of %3 back together</source>
        <translation>espera: %1; %2 de %3 montados</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>while stripping, %1</source>
        <translation>al desmontar, %1</translation>
    </message>
    <message>
        <source>wiring, %1</source>
        <translation>cables, %1</translation>
    </message>
    <message>
        <source>wrong part</source>
        <translation>recambio equivocado</translation>
    </message>
    <message>
        <source>■ unsafe</source>
        <translation>■ peligro</translation>
    </message>
    <message>
        <source>□ note</source>
        <translation>□ nota</translation>
    </message>
    <message>
        <source>◇ not on again</source>
        <translation>◇ sin montar</translation>
    </message>
    <message>
        <source>◇ not yet</source>
        <translation>◇ aún no</translation>
    </message>
    <message>
        <source>◇ too close to call</source>
        <translation>◇ muy justo para decidir</translation>
    </message>
    <message>
        <source>◧ soon</source>
        <translation>◧ pronto</translation>
    </message>
    <message>
        <source>☒ does not</source>
        <translation>☒ no funciona</translation>
    </message>
    <message>
        <source>☒ does not match</source>
        <translation>☒ no coincide</translation>
    </message>
    <message>
        <source>☒ left out: %1</source>
        <translation>☒ dejado: %1</translation>
    </message>
    <message>
        <source>☒ outside</source>
        <translation>☒ fuera</translation>
    </message>
    <message>
        <source>✓ matches</source>
        <translation>✓ coincide</translation>
    </message>
    <message>
        <source>✓ proved</source>
        <translation>✓ probado</translation>
    </message>
    <message>
        <source>✓ proved: %1</source>
        <translation>✓ probado: %1</translation>
    </message>
    <message>
        <source>✓ within</source>
        <translation>✓ dentro</translation>
    </message>
    <message>
        <source>✓ works</source>
        <translation>✓ funciona</translation>
    </message>
    <message>
        <source>☒ not proved: %1</source>
        <translation>☒ no probado: %1</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vacía, sin cable</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>A hose or cable does not run as it was found: %1.</source>
        <translation>Un tubo o cable no pasa como se encontró: %1.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Extremos</translation>
    </message>
    <message>
        <source>Hose or cable</source>
        <translation>Tubo o cable</translation>
    </message>
    <message>
        <source>Hoses and cables</source>
        <translation>Tubos y cables</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Did not work when it came in and was not tried again: %1.</source>
        <translation>No funcionaba al llegar y no se volvió a probar: %1.</translation>
    </message>
    <message>
        <source>Does not work: %1 (%2).</source>
        <translation>No funciona: %1 (%2).</translation>
    </message>
    <message>
        <source>Does not work: %1.</source>
        <translation>No funciona: %1.</translation>
    </message>
    <message>
        <source>Left as it was: %1 (%2).</source>
        <translation>Se dejó como estaba: %1 (%2).</translation>
    </message>
    <message>
        <source>Part not fitted: %1.</source>
        <translation>Recambio sin montar: %1.</translation>
    </message>
    <message>
        <source>What the owner said was not answered: %1.</source>
        <translation>Lo que dijo el dueño quedó sin respuesta: %1.</translation>
    </message>
    <message>
        <source>not tried: %1</source>
        <translation>no probado: %1</translation>
    </message>
    <message>
        <source>said to be put right: %1; not fitted: %2</source>
        <translation>dado por reparado: %1; sin montar: %2</translation>
    </message>
    <message>
        <source>said to be put right; not fitted: %1</source>
        <translation>dado por reparado; sin montar: %1</translation>
    </message>
    <message>
        <source>the owner&apos;s words</source>
        <translation>palabras del dueño</translation>
    </message>
    <message>
        <source>☒ does not: %1</source>
        <translation>☒ no funciona: %1</translation>
    </message>
    <message>
        <source>✓ works: %1</source>
        <translation>✓ funciona: %1</translation>
    </message>
</context>
<context>
    <name>RecordActions</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Grabar</translation>
    </message>
    <message>
        <source>Marks this place in the memo, to find it again</source>
        <translation>Marca este punto de la nota, para encontrarlo</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marcar</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>RefitActions</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
</context>
<context>
    <name>RefitPage</name>
    <message>
        <source>Refit</source>
        <translation>Montar</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Is refitted</source>
        <translation>Está montado</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Montado</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Nothing was stripped, so nothing is to be refitted.</source>
        <translation>No se desmontó nada, así que no hay nada que montar.</translation>
    </message>
    <message>
        <source>All %1 steps are on again. Measure, prove, then hand over.</source>
        <translation>Los %1 pasos están montados. Medir, probar y entregar.</translation>
    </message>
    <message>
        <source>Nothing to refit</source>
        <translation>Nada que montar</translation>
    </message>
    <message>
        <source>All refitted</source>
        <translation>Todo montado</translation>
    </message>
    <message>
        <source>Every task that is left waits. Under Steps each can be refitted all the same.</source>
        <translation>Cada tarea que queda espera. En Pasos se puede montar igualmente.</translation>
    </message>
    <message>
        <source>All else waits</source>
        <translation>Lo demás espera</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto de %1 al desmontar</translation>
    </message>
    <message>
        <source>Not yet: first %1</source>
        <translation>Aún no: primero %1</translation>
    </message>
    <message>
        <source>This task waits for %1</source>
        <translation>Esta tarea espera %1</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Ya no espera</translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Después: ajustar, purgar, probar</translation>
    </message>
    <message>
        <source>Torques</source>
        <translation>Pares</translation>
    </message>
    <message>
        <source>Says its torques alone</source>
        <translation>Dice solo sus pares</translation>
    </message>
    <message>
        <source>Nothing that is still to be refitted lies in bag %1.</source>
        <translation>En la bolsa %1 no hay nada que montar.</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Leer en silencio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Read back how it runs</source>
        <translation>Releer cómo va</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Releer tubos y cables</translation>
    </message>
    <message>
        <source>Read the wires back</source>
        <translation>Releer los cables</translation>
    </message>
    <message>
        <source>Refitted all the same</source>
        <translation>Montado de todos modos</translation>
    </message>
    <message>
        <source>Not all wires are read back. %1</source>
        <translation>No se han releído todos los cables. %1</translation>
    </message>
    <message>
        <source>It is not refitted</source>
        <translation>No está montado</translation>
    </message>
    <message>
        <source>All is on again, but not right: %1</source>
        <translation>Todo está montado, pero no bien: %1</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Pasos de montaje</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>Which goes on first?</source>
        <translation>¿Qué se monta primero?</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>The order is right</source>
        <translation>El orden está bien</translation>
    </message>
    <message>
        <source>Change the order</source>
        <translation>Cambiar el orden</translation>
    </message>
    <message>
        <source>Touch a step, then Earlier or Later.</source>
        <translation>Tocar un paso, luego Antes o Después.</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Releer tubos y cables</translation>
    </message>
</context>
<context>
    <name>RefusalPage</name>
    <message>
        <source>The owner says no</source>
        <translation>El dueño dice no</translation>
    </message>
    <message>
        <source>Keep the refusal</source>
        <translation>Guardar la negativa</translation>
    </message>
    <message>
        <source>Refusal</source>
        <translation>Negativa</translation>
    </message>
    <message>
        <source>Unsafe: %1</source>
        <translation>Peligro: %1</translation>
    </message>
    <message>
        <source>The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. Local law may forbid handing over an unsafe machine.</source>
        <translation>El hallazgo queda pendiente. El informe dirá en negrita que se avisó al dueño y se negó, y qué día. La ley local puede prohibir entregar un vehículo inseguro.</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>Con las palabras del dueño</translation>
    </message>
    <message>
        <source>will fetch it with a trailer</source>
        <translation>lo recogerá con remolque</translation>
    </message>
</context>
<context>
    <name>RestoreLists</name>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Looking for backups</source>
        <translation>Buscando copias</translation>
    </message>
    <message>
        <source>None here. Put in the stick or the card that they are on, then open this page again.</source>
        <translation>No hay ninguna. Meter la memoria o la tarjeta donde están y abrir de nuevo esta página.</translation>
    </message>
    <message>
        <source>From another folder</source>
        <translation>De otra carpeta</translation>
    </message>
    <message>
        <source>Other shops on this device</source>
        <translation>Otros talleres en este dispositivo</translation>
    </message>
    <message>
        <source>The shop on this device can only be looked at. Of every entry, photo and memo in it that can still be read, and of the copies beside it, a new one can be made.</source>
        <translation>El taller de este dispositivo solo se puede mirar. Con cada entrada, foto y nota que aún se puede leer, y con las copias de al lado, se puede hacer uno nuevo.</translation>
    </message>
    <message>
        <source>Make a new shop of what can be read</source>
        <translation>Hacer un taller nuevo con lo legible</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>Bring a shop back</source>
        <translation>Recuperar un taller</translation>
    </message>
    <message>
        <source>Opening the shop</source>
        <translation>Abriendo el taller</translation>
    </message>
    <message>
        <source>Bringing back</source>
        <translation>Recuperando</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Comprobando</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Bring back what can be read</source>
        <translation>Recuperar lo legible</translation>
    </message>
    <message>
        <source>Go on with this shop</source>
        <translation>Seguir con este</translation>
    </message>
    <message>
        <source>Choose another one</source>
        <translation>Elegir otra cosa</translation>
    </message>
    <message>
        <source>What is on this device now is not overwritten. It stays in %1 and is found here again.</source>
        <translation>Lo que hay ahora en este dispositivo no se sobrescribe. Queda en %1 y se encuentra aquí de nuevo.</translation>
    </message>
    <message>
        <source>The app was started with a folder of its own. At its next start it opens that one again, unless it is told otherwise with --store.</source>
        <translation>La aplicación se abrió con una carpeta propia. La próxima vez vuelve a abrir esa, si --store no dice otra cosa.</translation>
    </message>
    <message>
        <source>Passphrase of this backup</source>
        <translation>Frase secreta de esta copia</translation>
    </message>
    <message>
        <source>No backups here. Their names end in .backup.</source>
        <translation>Aquí no hay copias. Sus nombres acaban en .backup.</translation>
    </message>
    <message>
        <source>Removing</source>
        <translation>Quitando</translation>
    </message>
    <message>
        <source>Remove this shop</source>
        <translation>Quitar este taller</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Quitar para siempre</translation>
    </message>
    <message>
        <source>Its jobs, photos and memos go with it. Nothing but a backup brings them back.</source>
        <translation>Con él se van sus trabajos, fotos y notas. Solo una copia de seguridad los devuelve.</translation>
    </message>
</context>
<context>
    <name>RoadPage</name>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prueba en carretera y revisiones</translation>
    </message>
    <message>
        <source>Keep the road test</source>
        <translation>Guardar la prueba</translation>
    </message>
    <message>
        <source>Keep the recheck</source>
        <translation>Guardar la revisión</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prueba en carretera</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Ridden, km</source>
        <translation>Recorrido, km</translation>
    </message>
    <message>
        <source>What it was like</source>
        <translation>Cómo fue</translation>
    </message>
    <message>
        <source>holds straight, idles hot</source>
        <translation>va recto, buen ralentí en caliente</translation>
    </message>
    <message>
        <source>To be looked at again</source>
        <translation>Por mirar otra vez</translation>
    </message>
    <message>
        <source>due</source>
        <translation>vence</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>rear axle nut</source>
        <translation>tuerca del eje trasero</translation>
    </message>
    <message>
        <source>After km</source>
        <translation>Tras km</translation>
    </message>
    <message>
        <source>Or after days</source>
        <translation>O tras días</translation>
    </message>
</context>
<context>
    <name>RollingCopy</name>
    <message>
        <source>The daily copy of the shop could not be made; what you enter is still kept. %1</source>
        <translation>No se pudo hacer la copia diaria del taller; lo que se escribe se guarda igual. %1</translation>
    </message>
</context>
<context>
    <name>RoundListPage</name>
    <message>
        <source>Add the check</source>
        <translation>Añadir el control</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarlo</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>Otro control</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>El control</translation>
    </message>
    <message>
        <source>lever: firm, does not creep</source>
        <translation>maneta: firme, no cede</translation>
    </message>
    <message>
        <source>Part of the machine</source>
        <translation>Parte del vehículo</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno delantero</translation>
    </message>
</context>
<context>
    <name>RoundListsPage</name>
    <message>
        <source>Lists of checks</source>
        <translation>Listas de controles</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Sin hacer</translation>
    </message>
    <message>
        <source>Every check of this round has its answer.</source>
        <translation>Cada control de esta ronda tiene respuesta.</translation>
    </message>
</context>
<context>
    <name>RoundsPage</name>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>Empezar la ronda</translation>
    </message>
    <message>
        <source>A new round: what does the machine have?</source>
        <translation>Nueva ronda: ¿qué tiene el vehículo?</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Two-stroke</source>
        <translation>Dos tiempos</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Cuatro tiempos</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Transmisión</translation>
    </message>
    <message>
        <source>Gears</source>
        <translation>De marchas</translation>
    </message>
    <message>
        <source>Automatic</source>
        <translation>Automático</translation>
    </message>
    <message>
        <source>Starts by</source>
        <translation>Arranca por</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Pedal</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>Eléctrico</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Los dos</translation>
    </message>
    <message>
        <source>Front brake</source>
        <translation>Freno delantero</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Tambor</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Disco</translation>
    </message>
    <message>
        <source>Rear brake</source>
        <translation>Freno trasero</translation>
    </message>
    <message>
        <source>Go on with the round</source>
        <translation>Seguir la ronda</translation>
    </message>
    <message>
        <source>Begin another round</source>
        <translation>Empezar otra ronda</translation>
    </message>
</context>
<context>
    <name>Said</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bolsa %1</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>front tyre</source>
        <translation>neumático delantero</translation>
    </message>
    <message>
        <source>rear tyre</source>
        <translation>neumático trasero</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batería</translation>
    </message>
    <message>
        <source>tread</source>
        <translation>dibujo</translation>
    </message>
    <message>
        <source>Nothing was heard. Hold, say it, then let go.</source>
        <translation>No se oyó nada. Pulsar, decirlo y soltar.</translation>
    </message>
    <message>
        <source>Not sure what that was. Say it again.</source>
        <translation>No está claro qué era. Repetir.</translation>
    </message>
    <message>
        <source>That is nothing that can be said here. Say it again.</source>
        <translation>Eso aquí no se puede decir. Repetir.</translation>
    </message>
    <message>
        <source>That number is not believed. Say it again.</source>
        <translation>Ese número no es creíble. Repetir.</translation>
    </message>
</context>
<context>
    <name>SavedMark</name>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan</source>
        <translation>Escanear</translation>
    </message>
    <message>
        <source>Look for the number</source>
        <translation>Buscar el número</translation>
    </message>
    <message>
        <source>Hold the code of a bag or a part before the camera.</source>
        <translation>Poner el código de una bolsa o un recambio ante la cámara.</translation>
    </message>
    <message>
        <source>Or type the number</source>
        <translation>O escribir el número</translation>
    </message>
</context>
<context>
    <name>SecondEyesPage</name>
    <message>
        <source>Second pair of eyes</source>
        <translation>Otro par de ojos</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.</source>
        <translation>Aquí se firman frenos, ruedas, dirección y suspensión tocados y ya montados.</translation>
    </message>
    <message>
        <source>Nothing to sign</source>
        <translation>Nada que firmar</translation>
    </message>
    <message>
        <source>Whoever did not do the work looks at it and signs by a touch.</source>
        <translation>Quien no hizo el trabajo lo mira y firma con un toque.</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Quién mira</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>The voice of a Linux device, and what is spoken to it, are English.</source>
        <translation>La voz de un dispositivo Linux y lo que se le dice son en inglés.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Hand that holds the phone</source>
        <translation>Mano que sujeta el teléfono</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>How you see colours</source>
        <translation>Cómo ves los colores</translation>
    </message>
    <message>
        <source>As most do</source>
        <translation>Como la mayoría</translation>
    </message>
    <message>
        <source>Red weak</source>
        <translation>Poco el rojo</translation>
    </message>
    <message>
        <source>Green weak</source>
        <translation>Poco el verde</translation>
    </message>
    <message>
        <source>Blue weak</source>
        <translation>Poco el azul</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>A little</source>
        <translation>Un poco</translation>
    </message>
    <message>
        <source>Much</source>
        <translation>Mucho</translation>
    </message>
    <message>
        <source>Movement on the screen</source>
        <translation>Movimiento en la pantalla</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Algo</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Where a photo was taken</source>
        <translation>Dónde se hizo una foto</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Se guarda</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Los instrumentos del taller</translation>
    </message>
    <message>
        <source>The shop&apos;s lists of checks</source>
        <translation>Las listas de controles del taller</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Quién trabaja aquí</translation>
    </message>
    <message>
        <source>Work as %1</source>
        <translation>Trabajar como %1</translation>
    </message>
    <message>
        <source>Button to hold for speaking, at the lift (English)</source>
        <translation>Botón de pulsar para hablar, en el elevador (inglés)</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Oculto</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Visible</translation>
    </message>
    <message>
        <source>Hands-free, after &quot;turquoise battery&quot; (English). The microphone is then open while a screen at the lift is shown.</source>
        <translation>Manos libres, tras &quot;turquoise battery&quot; (inglés). El micrófono queda entonces abierto mientras se ve una pantalla del elevador.</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Apagado</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Encendido</translation>
    </message>
    <message>
        <source>Pace of the voice that reads aloud</source>
        <translation>Ritmo de la voz que lee</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Lento</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Muy lento</translation>
    </message>
    <message>
        <source>A spoken memo ends</source>
        <translation>Una nota hablada termina</translation>
    </message>
    <message>
        <source>By a touch</source>
        <translation>Con un toque</translation>
    </message>
    <message>
        <source>By silence too</source>
        <translation>También con silencio</translation>
    </message>
    <message>
        <source>The screen, while a job is open</source>
        <translation>La pantalla, mientras haya una orden abierta</translation>
    </message>
    <message>
        <source>Stays on</source>
        <translation>Sigue encendida</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Como el aparato</translation>
    </message>
    <message>
        <source>It dims without a touch. The touch that wakes it does nothing else.</source>
        <translation>Baja sin toques. El toque que la despierta no hace nada más.</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>After 1 min</source>
        <translation>Tras 1 min</translation>
    </message>
    <message>
        <source>After 2 min</source>
        <translation>Tras 2 min</translation>
    </message>
    <message>
        <source>After 5 min</source>
        <translation>Tras 5 min</translation>
    </message>
    <message>
        <source>Short tones for listening, recording, saved, refused</source>
        <translation>Tonos breves: escucha, graba, guardado, rechazado</translation>
    </message>
</context>
<context>
    <name>SettlePage</name>
    <message>
        <source>Settle the finding</source>
        <translation>Resolver el hallazgo</translation>
    </message>
    <message>
        <source>To the parts</source>
        <translation>A los recambios</translation>
    </message>
    <message>
        <source>Settle all the same</source>
        <translation>Resuelto de todos modos</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Not fitted: %1</source>
        <translation>Sin montar: %1</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>hose renewed, brake bled</source>
        <translation>latiguillo nuevo, freno purgado</translation>
    </message>
</context>
<context>
    <name>SeverityMark</name>
    <message>
        <source>unsafe</source>
        <translation>peligro</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The system refused the files. Share them from the system&apos;s file manager.</source>
        <translation>El sistema rechazó los archivos. Compártelos desde el gestor de archivos del sistema.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Make it again.</source>
        <translation>%1 ya no está. Hazlo otra vez.</translation>
    </message>
    <message>
        <source>This device has no program for %1. The file lies in %2.</source>
        <translation>Este dispositivo no tiene programa para %1. El archivo está en %2.</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Spreadsheets</source>
        <translation>Hojas de cálculo</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Traer: %1</translation>
    </message>
    <message>
        <source>Look at the file</source>
        <translation>Mirar el archivo</translation>
    </message>
    <message>
        <source>Write everything</source>
        <translation>Escribirlo todo</translation>
    </message>
    <message>
        <source>A sheet of machines has make and model in its head, one of parts has job and part.</source>
        <translation>Una hoja de vehículos lleva make y model en la cabecera; una de recambios, job y part.</translation>
    </message>
    <message>
        <source>File to bring in (CSV)</source>
        <translation>Archivo que traer (CSV)</translation>
    </message>
    <message>
        <source>Not brought in: %1</source>
        <translation>Sin traer: %1</translation>
    </message>
    <message>
        <source>Lines brought in: %1</source>
        <translation>Líneas traídas: %1</translation>
    </message>
</context>
<context>
    <name>ShopWindow</name>
    <message>
        <source>Undercowl</source>
        <translation>Undercowl</translation>
    </message>
</context>
<context>
    <name>SignaturePage</name>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Keep the signature</source>
        <translation>Guardar la firma</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>The machine was handed over with its record, and its cautions were read.</source>
        <translation>El vehículo se entregó con su informe, y sus avisos se leyeron.</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Quién firma</translation>
    </message>
    <message>
        <source>Field to sign in</source>
        <translation>Campo para firmar</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmado: %1</translation>
    </message>
</context>
<context>
    <name>SnackWords</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>SpokenMemo</name>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Oír</translation>
    </message>
    <message>
        <source>How fast it is played</source>
        <translation>A qué velocidad se oye</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Marca siguiente</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marcar</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>waits for %1</source>
        <translation>espera %1</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Steps so far</source>
        <translation>Pasos hasta ahora</translation>
    </message>
    <message>
        <source>Each step that is stripped stands here, the last one first.</source>
        <translation>Cada paso desmontado está aquí, el último primero.</translation>
    </message>
    <message>
        <source>Nothing stripped yet</source>
        <translation>Aún nada desmontado</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bolsa %1</translation>
    </message>
    <message>
        <source>%1 in bag %2</source>
        <translation>%1 en la bolsa %2</translation>
    </message>
    <message>
        <source>Routing: %1</source>
        <translation>Recorrido: %1</translation>
    </message>
    <message>
        <source>Ends: %1</source>
        <translation>Extremos: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Como llegó: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Vaciado: %1</translation>
    </message>
</context>
<context>
    <name>StripActions</name>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Sujeto por</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Bolsa</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>StripDetails</name>
    <message>
        <source>Where it runs, what it passes</source>
        <translation>Por dónde va, junto a qué</translation>
    </message>
    <message>
        <source>left of the headstock, over the clutch cable</source>
        <translation>a la izquierda de la pipa, sobre el cable de embrague</translation>
    </message>
    <message>
        <source>Where its ends sit: hose, vent, cable</source>
        <translation>Dónde van los extremos: tubo, respiración, cable</translation>
    </message>
    <message>
        <source>tap, upper nipple; carburettor, right</source>
        <translation>grifo arriba; carburador derecha</translation>
    </message>
    <message>
        <source>Adjustment as found: turns, marks, shims</source>
        <translation>Ajuste como llegó: vueltas, marcas, calces</translation>
    </message>
    <message>
        <source>adjuster 7 turns out, mark at 2 o&apos;clock</source>
        <translation>7 vueltas fuera, marca a las 2</translation>
    </message>
    <message>
        <source>Fluid let out, and how much</source>
        <translation>Fluido vaciado, y cuánto</translation>
    </message>
    <message>
        <source>brake fluid, 40 ml</source>
        <translation>líquido de frenos, 40 ml</translation>
    </message>
</context>
<context>
    <name>StripEntryActions</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>Step %1</source>
        <translation>Paso %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>paso %1</translation>
    </message>
    <message>
        <source>Correct step</source>
        <translation>Corregir el paso</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Sujeto por</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Bolsa</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Keep the bag</source>
        <translation>Guardar la bolsa</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Pasos hasta ahora</translation>
    </message>
    <message>
        <source>Where it sits</source>
        <translation>Dónde va</translation>
    </message>
    <message>
        <source>For the refit</source>
        <translation>Para el montaje</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Photo of this step</source>
        <translation>Foto de este paso</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Qué se quita</translation>
    </message>
    <message>
        <source>unplug 6-place connector</source>
        <translation>soltar el conector de 6 vías</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>spring hooked in the left hole</source>
        <translation>muelle enganchado al agujero izquierdo</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Añadir un aviso</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>¿Qué aviso va antes de este paso?</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>tap: where it sits</source>
        <translation>tocar: dónde va</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>sin lugar</translation>
    </message>
    <message>
        <source>Routing, fluids, adjustment</source>
        <translation>Recorrido, fluidos, ajuste</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
</context>
<context>
    <name>StripTask</name>
    <message>
        <source>task of this step</source>
        <translation>tarea de este paso</translation>
    </message>
    <message>
        <source>tasks can wait one by one</source>
        <translation>las tareas pueden esperar una a una</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Sin tarea</translation>
    </message>
    <message>
        <source>New task</source>
        <translation>Nueva tarea</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno delantero</translation>
    </message>
    <message>
        <source>Which task does this step belong to?</source>
        <translation>¿A qué tarea pertenece este paso?</translation>
    </message>
</context>
<context>
    <name>StrokeActions</name>
    <message>
        <source>Confirm</source>
        <translation>Confirmar</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es %1</translation>
    </message>
    <message>
        <source>Next open wire</source>
        <translation>Otro cable abierto</translation>
    </message>
    <message>
        <source>Other colour</source>
        <translation>Otro color</translation>
    </message>
    <message>
        <source>All %1 sure</source>
        <translation>Los %1 seguros</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Look at this wire again</source>
        <translation>Mirar otra vez este cable</translation>
    </message>
    <message>
        <source>White paper is in the picture: tap it</source>
        <translation>Hay papel blanco en la imagen: tocarlo</translation>
    </message>
    <message>
        <source>Turn round: place 1 is at the other end</source>
        <translation>Dar la vuelta: la vía 1 está al otro extremo</translation>
    </message>
    <message>
        <source>This place is empty</source>
        <translation>Esta vía está vacía</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>En una vía propia</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Segundo cable de la vía anterior</translation>
    </message>
    <message>
        <source>A wire is missing before this one</source>
        <translation>Falta un cable antes de este</translation>
    </message>
    <message>
        <source>A wire is missing after this one</source>
        <translation>Falta un cable después de este</translation>
    </message>
    <message>
        <source>This is no wire: take it out</source>
        <translation>No es un cable: quitarlo</translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Ya no confirmado</translation>
    </message>
    <message>
        <source>Bring the rows before the last stroke back</source>
        <translation>Recuperar las filas de antes del último trazo</translation>
    </message>
    <message>
        <source>The photo shows one side of a wire. Turn each of them: a tracer may lie on the other side.</source>
        <translation>La foto muestra un lado del cable. Girar cada uno: en el otro lado puede haber un trazo.</translation>
    </message>
    <message>
        <source>All %1, each was turned</source>
        <translation>Los %1, cada uno girado</translation>
    </message>
    <message>
        <source>One by one</source>
        <translation>Uno por uno</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>StrokeFinding</name>
    <message>
        <source>Take these %1</source>
        <translation>Tomar estos %1</translation>
    </message>
    <message>
        <source>None touched</source>
        <translation>Ninguno tocado</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Stroke instead</source>
        <translation>Mejor un trazo</translation>
    </message>
</context>
<context>
    <name>StrokePage</name>
    <message>
        <source>%1 open</source>
        <translation>%1 abiertos</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Leyendo los cables</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Tap the middle of the white paper.</source>
        <translation>Tocar el centro del papel blanco.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ahora tocar el último cable.</translation>
    </message>
    <message>
        <source>Stroke across the wires, place 1 first. Or tap the first wire and then the last.</source>
        <translation>Pasar el dedo por los cables, la vía 1 primero. O tocar el primer cable y luego el último.</translation>
    </message>
    <message>
        <source>Open the photo again</source>
        <translation>Abrir la foto otra vez</translation>
    </message>
    <message>
        <source>Find the wires without a stroke</source>
        <translation>Hallar los cables sin trazo</translation>
    </message>
    <message>
        <source>White paper is in the picture</source>
        <translation>Hay papel blanco en la imagen</translation>
    </message>
    <message>
        <source>This one is not sure. Say its colour.</source>
        <translation>Este no es seguro. Decir su color.</translation>
    </message>
    <message>
        <source>No wire is open any more.</source>
        <translation>Ya no queda ningún cable abierto.</translation>
    </message>
    <message>
        <source>Say the colour alone here. Terminal and function belong to the place.</source>
        <translation>Aquí decir solo el color. Terminal y función van en la vía.</translation>
    </message>
</context>
<context>
    <name>StrokePhoto</name>
    <message>
        <source>Photo of the wires</source>
        <translation>Foto de los cables</translation>
    </message>
</context>
<context>
    <name>TakeInMachine</name>
    <message>
        <source>Machine</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Número de bastidor</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Cuentakilómetros</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>El cuentakilómetros cuenta</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>Ridden at, metres above the sea</source>
        <translation>Circula a, metros sobre el mar</translation>
    </message>
    <message>
        <source>Rider with clothes, kg</source>
        <translation>Conductor con ropa, kg</translation>
    </message>
    <message>
        <source>Luggage or second rider, kg</source>
        <translation>Equipaje o pasajero, kg</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>two riders on Sundays, parcels</source>
        <translation>dos los domingos, paquetes</translation>
    </message>
</context>
<context>
    <name>TakeInOwner</name>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <translation>Nombre del dueño</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>Correo</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Machine and owner</source>
        <translation>Vehículo y dueño</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Abrir la orden</translation>
    </message>
    <message>
        <source>Continues the entry from %1</source>
        <translation>Sigue la entrada de %1</translation>
    </message>
    <message>
        <source>Open the job first, then say it again.</source>
        <translation>Primero abrir la orden y repetirlo.</translation>
    </message>
</context>
<context>
    <name>TakeInReason</name>
    <message>
        <source>Why it is here</source>
        <translation>Por qué está aquí</translation>
    </message>
    <message>
        <source>no lights, stood six winters</source>
        <translation>sin luces, parado seis inviernos</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Llaves y papeles recibidos</translation>
    </message>
    <message>
        <source>two keys, registration</source>
        <translation>dos llaves, permiso de circulación</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Qué funciona</translation>
    </message>
    <message>
        <source>kicks over, front brake holds</source>
        <translation>arranca, el freno delantero aguanta</translation>
    </message>
    <message>
        <source>What does not work</source>
        <translation>Qué no funciona</translation>
    </message>
    <message>
        <source>horn, all lamps</source>
        <translation>claxon, todas las luces</translation>
    </message>
</context>
<context>
    <name>TalkAloud</name>
    <message>
        <source>Say again</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Says it again, more slowly; after the slowest comes the usual pace</source>
        <translation>Lo repite más despacio; tras lo más lento vuelve el paso normal</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
</context>
<context>
    <name>TalkBar</name>
    <message>
        <source>Hearing</source>
        <translation>Oyendo</translation>
    </message>
    <message>
        <source>While it is held, say: %1</source>
        <translation>Mientras se pulsa, decir: %1</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>Escuchando</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Pulsar y hablar</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>This one has only just come up. Look at it, then say it again.</source>
        <translation>Este acaba de aparecer. Mirarlo y repetirlo.</translation>
    </message>
</context>
<context>
    <name>TalkHeard</name>
    <message>
        <source>Heard: %1</source>
        <translation>Oído: %1</translation>
    </message>
    <message>
        <source>Takes back what was heard</source>
        <translation>Retira lo oído</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Listening: say it.</source>
        <translation>Escuchando: hablar.</translation>
    </message>
    <message>
        <source>Microphone on. Say &quot;%1&quot; first.</source>
        <translation>Micrófono encendido. Decir antes &quot;%1&quot;.</translation>
    </message>
</context>
<context>
    <name>TalkTool</name>
    <message>
        <source>Buttons only</source>
        <translation>Solo botones</translation>
    </message>
    <message>
        <source>Speak</source>
        <translation>Hablar</translation>
    </message>
</context>
<context>
    <name>TaskPage</name>
    <message>
        <source>Stop the watch</source>
        <translation>Parar el reloj</translation>
    </message>
    <message>
        <source>Start the watch</source>
        <translation>Poner el reloj</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Ya no espera</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Dejar en espera</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarla</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Waits for %1</source>
        <translation>Espera %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierta</translation>
    </message>
    <message>
        <source>The watch runs. %1 so far.</source>
        <translation>El reloj corre. %1 hasta ahora.</translation>
    </message>
    <message>
        <source>Time spent: %1</source>
        <translation>Tiempo empleado: %1</translation>
    </message>
    <message>
        <source>This watch ran longer than anyone works at a stretch. How many minutes was it?</source>
        <translation>Este reloj corrió más de lo que nadie trabaja de un tirón. ¿Cuántos minutos fueron?</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>It was that long</source>
        <translation>Fue así de largo</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>¿Qué espera?</translation>
    </message>
    <message>
        <source>brake shoes, on order</source>
        <translation>zapatas de freno, pedidas</translation>
    </message>
    <message>
        <source>To be finished first</source>
        <translation>Por terminar antes</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
    <message>
        <source>What it waits for</source>
        <translation>Qué espera</translation>
    </message>
    <message>
        <source>What holds it up?</source>
        <translation>¿Qué la detiene?</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>Else</source>
        <translation>Otra cosa</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Vaciar %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>p. ej. %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Vaciar %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>p. ej. %1</translation>
    </message>
</context>
<context>
    <name>TwinsPanel</name>
    <message>
        <source>Twins</source>
        <translation>Gemelos</translation>
    </message>
    <message>
        <source>Tag them</source>
        <translation>Marcarlos</translation>
    </message>
    <message>
        <source>Tag on %1</source>
        <translation>Marca en %1</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
</context>
<context>
    <name>VerdictMark</name>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>muy justo</translation>
    </message>
</context>
<context>
    <name>WireLoupe</name>
    <message>
        <source>The wire that was understood, enlarged</source>
        <translation>El cable entendido, ampliado</translation>
    </message>
</context>
<context>
    <name>WirePicker</name>
    <message>
        <source>Choose the base colour again</source>
        <translation>Elegir otra vez el color base</translation>
    </message>
    <message>
        <source>Base colour</source>
        <translation>Color base</translation>
    </message>
    <message>
        <source>%1: which tracer?</source>
        <translation>%1: ¿qué trazo?</translation>
    </message>
    <message>
        <source>no tracer</source>
        <translation>sin trazo</translation>
    </message>
</context>
<context>
    <name>WireSteps</name>
    <message>
        <source>The next wire on that side was meant</source>
        <translation>Era el cable vecino de ese lado</translation>
    </message>
    <message>
        <source>Wire above</source>
        <translation>Cable de arriba</translation>
    </message>
    <message>
        <source>Wire left</source>
        <translation>Cable a la izquierda</translation>
    </message>
    <message>
        <source>Wire below</source>
        <translation>Cable de abajo</translation>
    </message>
    <message>
        <source>Wire right</source>
        <translation>Cable a la derecha</translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>sin marca</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>%1 × %2: places %3.</source>
        <translation>%1 × %2: vías %3.</translation>
    </message>
    <message>
        <source>Told apart by %1.</source>
        <translation>Se distinguen por %1.</translation>
    </message>
    <message>
        <source>Tag them, or tell them apart by terminal: %1.</source>
        <translation>Marcarlos, o distinguirlos por el terminal: %1.</translation>
    </message>
    <message>
        <source>Tag them before they are unplugged.</source>
        <translation>Marcarlos antes de soltarlos.</translation>
    </message>
    <message>
        <source>To you places %1 and %2 look alike: %3 and %4.</source>
        <translation>Para tus ojos las vías %1 y %2 son iguales: %3 y %4.</translation>
    </message>
    <message>
        <source>With tags at %1 every wire can be told apart.</source>
        <translation>Con marcas en %1 se distingue cada cable.</translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n vía</numerusform>
            <numerusform>%n vías</numerusform>
        </translation>
    </message>
    <message>
        <source>seen from the %1</source>
        <translation>visto desde: %1</translation>
    </message>
    <message>
        <source>latch %1</source>
        <translation>cierre %1</translation>
    </message>
    <message>
        <source>no wire confirmed yet</source>
        <translation>aún ningún cable confirmado</translation>
    </message>
    <message>
        <source>%1 wires confirmed, %2 places</source>
        <translation>%1 cables confirmados, %2 vías</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>as it should be, not as found</source>
        <translation>como debe ser, no como llegó</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>debería ser %1</translation>
    </message>
    <message>
        <source>read from the photo, confirmed</source>
        <translation>leído de la foto, confirmado</translation>
    </message>
    <message>
        <source>second choice of the reader, confirmed</source>
        <translation>segunda opción del lector, confirmada</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>elegido a mano</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>glare covers it: tilt the phone</source>
        <translation>lo tapa un brillo: inclinar el teléfono</translation>
    </message>
    <message>
        <source>too dark to tell: bring a light</source>
        <translation>demasiado oscuro: traer una luz</translation>
    </message>
    <message>
        <source>too small in the picture: go closer</source>
        <translation>demasiado pequeño: acercarse</translation>
    </message>
    <message>
        <source>the light is not known: lay white paper beside it</source>
        <translation>luz desconocida: poner papel blanco al lado</translation>
    </message>
    <message>
        <source>too little of it is free: move what lies across</source>
        <translation>se ve muy poco: apartar lo que cruza</translation>
    </message>
    <message>
        <source>two colours are about as likely</source>
        <translation>dos colores son casi igual de probables</translation>
    </message>
    <message>
        <source>likely, but not certain</source>
        <translation>probable, pero no seguro</translation>
    </message>
    <message>
        <source>tapped beside it: see that the outlined wire is meant</source>
        <translation>tocado al lado: ver que el cable marcado sea el bueno</translation>
    </message>
    <message>
        <source>nothing like a wire here: tap on the wire</source>
        <translation>aquí nada parece un cable: tocar el cable</translation>
    </message>
    <message>
        <source>too bright to tell: less light, or no flash</source>
        <translation>demasiado claro: menos luz, o sin flash</translation>
    </message>
    <message>
        <source>two lights mix on it: shade one of them</source>
        <translation>se mezclan dos luces: tapar una</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>ningún cable encontrado</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>not sure: %1?</source>
        <translation>no seguro: ¿%1?</translation>
    </message>
    <message>
        <source>not sure: %1 or %2</source>
        <translation>no seguro: %1 o %2</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>conector</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>terminales sueltos</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>empalme</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>masa común</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>lado cables</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>cara de contacto</translation>
    </message>
    <message>
        <source>loom half</source>
        <translation>lado mazo</translation>
    </message>
    <message>
        <source>unit half</source>
        <translation>lado aparato</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>como debe ser</translation>
    </message>
    <message>
        <source>as refitted</source>
        <translation>como se montó</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>faston macho</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>faston hembra</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>bala macho</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>bala hembra</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>anillo</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>horquilla</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pin</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>zócalo</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>pelado</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>vía %1</translation>
    </message>
    <message>
        <source>place %1, second wire</source>
        <translation>vía %1, segundo cable</translation>
    </message>
    <message>
        <source>DIN %1</source>
        <translation>DIN %1</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>oído</translation>
    </message>
    <message>
        <source>leave empty</source>
        <translation>dejar vacía</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vacía, sin cable</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Read wires back</source>
        <translation>Releer los cables</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>New connector</source>
        <translation>Nuevo conector</translation>
    </message>
    <message>
        <source>A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.</source>
        <translation>Un conector, una fila de terminales sueltos, un empalme o una masa común: decir qué es antes de soltarlo.</translation>
    </message>
    <message>
        <source>No wires mapped yet</source>
        <translation>Aún sin plano de cables</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The picture %1 cannot be read: it is gone, or reading it is not allowed. Choose another one.</source>
        <translation>La imagen %1 no se puede leer: ya no está, o no se permite leerla. Elegir otra.</translation>
    </message>
    <message>
        <source>The picture %1 is larger than 200 MiB. Choose a smaller one.</source>
        <translation>La imagen %1 pasa de 200 MiB. Elegir una más pequeña.</translation>
    </message>
    <message>
        <source>%1 is not a JPEG or PNG picture, or it is damaged. Choose another one.</source>
        <translation>%1 no es una imagen JPEG o PNG, o está dañada. Elegir otra.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. Make room, then try again; what you entered is still here.</source>
        <translation>No guardado: el disco está lleno. Hacer sitio y probar otra vez; lo escrito sigue aquí.</translation>
    </message>
    <message>
        <source>Not saved: the system refused to write. What you entered is still here; try again.</source>
        <translation>No guardado: el sistema no quiso escribir. Lo escrito sigue aquí; probar otra vez.</translation>
    </message>
    <message>
        <source>The shop&apos;s store cannot be opened.</source>
        <translation>No se abre el almacén de datos del taller.</translation>
    </message>
    <message>
        <source>The shop&apos;s store is damaged. Nothing was deleted; keep a copy of it before anything else.</source>
        <translation>El almacén de datos del taller está dañado. No se borró nada; guardar una copia antes que nada.</translation>
    </message>
    <message>
        <source>The shop&apos;s store was written by a newer version. Bring this app up to date.</source>
        <translation>El almacén de datos del taller lo escribió una versión más nueva. Actualizar esta app.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>No guardado.</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>peligro</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>consultado</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>here</source>
        <translation>llegado</translation>
    </message>
    <message>
        <source>wrong one</source>
        <translation>equivocado</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montado</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como llegó</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>paso de desmontaje</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>cables</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>montado</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>Machine not described yet</source>
        <translation>Vehículo aún sin describir</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>ayer %1</translation>
    </message>
    <message>
        <source>%1, %2 days ago</source>
        <translation>%1, hace %2 días</translation>
    </message>
    <message>
        <source>%1, %2 weeks ago</source>
        <translation>%1, hace %2 semanas</translation>
    </message>
    <message>
        <source>%1, %2 months ago</source>
        <translation>%1, hace %2 meses</translation>
    </message>
    <message>
        <source>For bench time</source>
        <translation>Tiempo de taller</translation>
    </message>
    <message>
        <source>To be proved</source>
        <translation>Por probar</translation>
    </message>
    <message>
        <source>Ready to hand over</source>
        <translation>Listos para entregar</translation>
    </message>
    <message>
        <source>For the owner&apos;s answer</source>
        <translation>Respuesta del dueño</translation>
    </message>
    <message>
        <source>For parts</source>
        <translation>Recambios</translation>
    </message>
    <message>
        <source>For something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>no hace falta</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>No se pudo escribir la imagen: %1. Hacer sitio y probar otra vez.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::LoudspeakerPlayer</name>
    <message>
        <source>This memo&apos;s sound cannot be read. Its text and its place in the job are kept.</source>
        <translation>El sonido de esta nota no se puede leer. Su texto y su sitio en el trabajo quedan.</translation>
    </message>
    <message>
        <source>No loudspeaker answers. Connect one, or switch it on in the device&apos;s settings.</source>
        <translation>Ningún altavoz responde. Conectar uno, o encenderlo en los ajustes del dispositivo.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneListener</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or use the buttons.</source>
        <translation>Ningún micrófono responde. Permitirlo en los ajustes del dispositivo, o usar los botones.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or use the buttons.</source>
        <translation>El micrófono no se abre. Cerrar otros programas que lo usen, o usar los botones.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneRecorder</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or type the memo.</source>
        <translation>Ningún micrófono responde. Permitirlo en los ajustes del dispositivo, o escribir la nota.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or type the memo.</source>
        <translation>El micrófono no se abre. Cerrar otros programas que lo usan, o escribir la nota.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MultimediaCamera</name>
    <message>
        <source>The camera does not answer: %1. Close other programs that use it, or take the photo from a file.</source>
        <translation>La cámara no responde: %1. Cerrar otros programas que la usen, o tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The photo was not taken: %1. Try again.</source>
        <translation>La foto no salió: %1. Probar otra vez.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SoundRecorder</name>
    <message>
        <source>The memo cannot be written any further (%1). What was said until then is kept; make room, then go on in another one.</source>
        <translation>La nota no se puede escribir más (%1). Lo dicho queda; hacer sitio y seguir en otra.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemScreen</name>
    <message>
        <source>This session has no message bus, so the screen may go out. Set the system to leave it on.</source>
        <translation>Esta sesión no tiene bus de mensajes: la pantalla puede apagarse. Ajustar en el sistema que siga encendida.</translation>
    </message>
    <message>
        <source>A job is open at the lift</source>
        <translation>Hay una orden abierta en el elevador</translation>
    </message>
    <message>
        <source>The system does not let the screen be kept on (%1). Set it there to stay on.</source>
        <translation>El sistema no deja la pantalla encendida (%1). Ajustar allí que siga encendida.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemVoice</name>
    <message>
        <source>The voice failed. Read it on the screen.</source>
        <translation>Falló la voz. Leerlo en la pantalla.</translation>
    </message>
    <message>
        <source>This device has no voice. Install one in its settings, or read it on the screen.</source>
        <translation>Este dispositivo no tiene voz. Instalar una en sus ajustes, o leerlo en la pantalla.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::AfterwardsView</name>
    <message>
        <source>%1 is not on again</source>
        <translation>%1 no está montado</translation>
    </message>
    <message>
        <source>Do not start: %1</source>
        <translation>No arrancar: %1</translation>
    </message>
    <message>
        <source>Do not ride: %1</source>
        <translation>No circular: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>tras: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;goes home on a trailer&quot;.</source>
        <translation>Escribir por qué se deja, por ejemplo &quot;va a casa en remolque&quot;.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Dejado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message>
        <source>This device</source>
        <translation>Este dispositivo</translation>
    </message>
    <message>
        <source>looking ...</source>
        <translation>buscando ...</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>At least eight characters; several words are best.</source>
        <translation>Al menos ocho caracteres; mejor varias palabras.</translation>
    </message>
    <message>
        <source>Type it once more, the same way.</source>
        <translation>Escribirla otra vez, igual.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 se escribió y se releyó: %n foto o nota, %2.</numerusform>
            <numerusform>%1 se escribió y se releyó: %n fotos y notas, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not in it: %1</source>
        <translation>No está dentro: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Band</name>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CalcView</name>
    <message>
        <source>Still needed: %1</source>
        <translation>Aún falta: %1</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; posible: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>veredicto: %1</translation>
    </message>
    <message>
        <source>%1 sure to be within</source>
        <translation>%1 de seguridad de estar dentro</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 if left empty</source>
        <translation>%1 si queda vacío</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 (from %3)</source>
        <translation>%1: %2 (de %3)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CameraHints</name>
    <message>
        <source>Hold still.</source>
        <translation>No mover.</translation>
    </message>
    <message>
        <source>Too close or out of focus: move back a little.</source>
        <translation>Demasiado cerca o borroso: alejarse un poco.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap the wire.</source>
        <translation>Demasiado cerca o borroso: tocar el cable.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap what must be sharp.</source>
        <translation>Demasiado cerca o borroso: tocar lo que debe verse nítido.</translation>
    </message>
    <message>
        <source>Lay white paper beside the wires.</source>
        <translation>Poner papel blanco junto a los cables.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CarryView</name>
    <message>
        <source>it lights when it is switched</source>
        <translation>luce al accionarlo</translation>
    </message>
    <message>
        <source>it sounds when it is pressed</source>
        <translation>suena al pulsarlo</translation>
    </message>
    <message>
        <source>what it serves works when it is switched</source>
        <translation>lo que manda funciona al accionarlo</translation>
    </message>
    <message>
        <source>Not known what it serves: follow it, then measure to earth and to each lamp. Nothing is connected before that is known.</source>
        <translation>Función desconocida: seguirlo, luego medir a masa y a cada luz. Nada se conecta antes de saberla.</translation>
    </message>
    <message>
        <source>Live, ignition, charging or starter: battery voltage to earth, ignition off and on. Measured only, never tried.</source>
        <translation>Con tensión, encendido, carga o arranque: tensión de batería a masa, contacto quitado y puesto. Solo medir, nunca probar.</translation>
    </message>
    <message>
        <source>Earth: close to no resistance to the bare frame.</source>
        <translation>Masa: casi sin resistencia al bastidor sin pintura.</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 en lugar de %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, ahora %2</translation>
    </message>
    <message>
        <source>serves %1</source>
        <translation>función: %1</translation>
    </message>
    <message>
        <source>Leave empty: %1</source>
        <translation>Dejar vacía: %1</translation>
    </message>
    <message>
        <source>No place for %1 (%2)</source>
        <translation>Sin vía para %1 (%2)</translation>
    </message>
    <message>
        <source>Insulate its end and tie it back.</source>
        <translation>Aislar su punta y atarlo aparte.</translation>
    </message>
    <message>
        <source>one after the other: %1</source>
        <translation>una tras otra: %1</translation>
    </message>
    <message>
        <source>carried over by what it serves</source>
        <translation>trasladado según su función</translation>
    </message>
    <message>
        <source>Wires carried over</source>
        <translation>Cables trasladados</translation>
    </message>
    <message>
        <source>found by trying</source>
        <translation>hallado probando</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Hallado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CompareView</name>
    <message>
        <source>Confirm the wires on the photo before first: there is nothing yet to compare with.</source>
        <translation>Confirmar primero los cables en la foto de antes: aún no hay con qué comparar.</translation>
    </message>
    <message>
        <source>Take a photo of the wires as they are now, from about the same side.</source>
        <translation>Tomar una foto de los cables como están ahora, más o menos desde el mismo lado.</translation>
    </message>
    <message>
        <source>The same: no wire has changed its place.</source>
        <translation>Igual: ningún cable cambió de sitio.</translation>
    </message>
    <message>
        <source>Cannot tell. Read the wires back one by one.</source>
        <translation>No se puede decir. Releer los cables uno a uno.</translation>
    </message>
    <message>
        <source>Changed: places %1 swapped.</source>
        <translation>Cambiado: vías %1 intercambiadas.</translation>
    </message>
    <message>
        <source>The wire of place %1 was not found: it is missing, or was not read.</source>
        <translation>El cable de la vía %1 no se encontró: falta, o no se leyó.</translation>
    </message>
    <message>
        <source>Changed: a wire more, number %1 of this stroke.</source>
        <translation>Cambiado: un cable más, el número %1 de este trazo.</translation>
    </message>
    <message>
        <source>Changed: another wire in place %1.</source>
        <translation>Cambiado: otro cable en la vía %1.</translation>
    </message>
    <message>
        <source>%1 wires were read, %2 are in the map: stroke across all of them, and only them</source>
        <translation>Se leyeron %1 cables, en el plano hay %2: pasar el dedo por todos, y solo por ellos</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ConsumablesView</name>
    <message>
        <source>batch %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>abierto %1</translation>
    </message>
    <message>
        <source>Type what goes in, such as &quot;brake fluid&quot;.</source>
        <translation>Escribir qué se pone, por ejemplo &quot;líquido de frenos&quot;.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CostView</name>
    <message>
        <source>Other work</source>
        <translation>Otro trabajo</translation>
    </message>
    <message>
        <source>%1 % tax: %2</source>
        <translation>impuesto %1 %: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Escribir la moneda, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Type the rate as a number, such as 58.50.</source>
        <translation>Escribir la tarifa como número, por ejemplo 58.50.</translation>
    </message>
    <message>
        <source>Type the tax as a number of per cent, such as 19.</source>
        <translation>Escribir el impuesto como número por ciento, por ejemplo 21.</translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation>Calculado</translation>
    </message>
    <message>
        <source>Type what it is for, such as &quot;tyre fitted outside&quot;.</source>
        <translation>Escribir por qué concepto, por ejemplo &quot;neumático montado fuera&quot;.</translation>
    </message>
    <message>
        <source>Type the sum without tax as a number, such as 12.50.</source>
        <translation>Escribir el importe sin impuesto como número, por ejemplo 12.50.</translation>
    </message>
    <message>
        <source>Line added</source>
        <translation>Línea añadida</translation>
    </message>
    <message>
        <source>Line taken out</source>
        <translation>Línea quitada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Finder</name>
    <message>
        <source>machine</source>
        <translation>vehículo</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>dueño</translation>
    </message>
    <message>
        <source>job</source>
        <translation>orden</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>paso de desmontaje</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>cable</translation>
    </message>
    <message>
        <source>part</source>
        <translation>recambio</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>memo</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>anything</source>
        <translation>cualquier cosa</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Findings</name>
    <message>
        <source>%1 does not want it put right (%2)</source>
        <translation>%1 no quiere que se repare (%2)</translation>
    </message>
    <message>
        <source>is a task</source>
        <translation>es una tarea</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Escribir minutos enteros, por ejemplo 45.</translation>
    </message>
    <message>
        <source>Type what was found, such as &quot;brake hose cracked&quot;.</source>
        <translation>Escribir qué se encontró, por ejemplo &quot;latiguillo agrietado&quot;.</translation>
    </message>
    <message>
        <source>Choose how serious it is: unsafe, soon or note.</source>
        <translation>Elegir la gravedad: peligro, pronto o nota.</translation>
    </message>
    <message>
        <source>Finding kept</source>
        <translation>Hallazgo guardado</translation>
    </message>
    <message>
        <source>Task made: %1</source>
        <translation>Tarea creada: %1</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Abierto de nuevo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::FunctionsView</name>
    <message>
        <source>works</source>
        <translation>funciona</translation>
    </message>
    <message>
        <source>does not work</source>
        <translation>no funciona</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>no probado</translation>
    </message>
    <message>
        <source>when it came in: %1</source>
        <translation>al llegar: %1</translation>
    </message>
    <message>
        <source>the owner said, when it came in</source>
        <translation>el dueño dijo al llegar</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::GatheringView</name>
    <message>
        <source>Type what it is, such as &quot;right switch cluster&quot;.</source>
        <translation>Escribir qué es, por ejemplo &quot;piña derecha&quot;.</translation>
    </message>
    <message>
        <source>Give the number of places, 1 to %1.</source>
        <translation>Dar el número de vías, 1 a %1.</translation>
    </message>
    <message>
        <source>Give the number of rows, 1 to %1.</source>
        <translation>Dar el número de filas, 1 a %1.</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 guardado</translation>
    </message>
    <message>
        <source>Place 1 marked</source>
        <translation>Vía 1 marcada</translation>
    </message>
    <message>
        <source>Tag taken off</source>
        <translation>Marca quitada</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Marca %1</translation>
    </message>
    <message>
        <source>Tagged %1</source>
        <translation>Marcado: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Como llegó: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::HandOverView</name>
    <message>
        <source>Settle it, or record that the owner does not want it.</source>
        <translation>Resolverlo, o anotar que el dueño no lo quiere.</translation>
    </message>
    <message>
        <source>Do it, or say why it is left out.</source>
        <translation>Hacerlo, o decir por qué se deja.</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Sin montar: %1</translation>
    </message>
    <message>
        <source>Bag %1 is still closed.</source>
        <translation>La bolsa %1 sigue cerrada.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message numerus="yes">
        <source>%n not done or not proved</source>
        <translation>
            <numerusform>%n sin hacer o sin probar</numerusform>
            <numerusform>%n sin hacer o sin probar</numerusform>
        </translation>
    </message>
    <message>
        <source>Put it right, then read it back again.</source>
        <translation>Corrígelo y vuelve a leerlo.</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>firmado por %1, %2</translation>
    </message>
    <message>
        <source>Read the wires back, or say why they are left out.</source>
        <translation>Relee los cables, o di por qué se omite.</translation>
    </message>
    <message>
        <source>Tighten it and measure again, or say why it is left out.</source>
        <translation>Apriétalo y mide otra vez, o di por qué se omite.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note a finding.</source>
        <translation>Arréglalo y mide otra vez, o anota un hallazgo.</translation>
    </message>
    <message>
        <source>Wire does not match: %1, place %2</source>
        <translation>El cable no coincide: %1, vía %2</translation>
    </message>
    <message>
        <source>Say whether it works now, or why it is left.</source>
        <translation>Decir si ahora funciona, o por qué se deja.</translation>
    </message>
    <message>
        <source>Refit it, or write under &quot;To be told at hand-over&quot; how it leaves without being ridden.</source>
        <translation>Montarlo, o escribir en &quot;Para decir en la entrega&quot; cómo sale sin circular.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note it as unsafe and record that the owner does not want it.</source>
        <translation>Ponerlo bien y medir otra vez, o anotarlo como peligro y apuntar que el dueño no lo quiere.</translation>
    </message>
    <message>
        <source>It must not be ridden: type how it leaves, such as &quot;fetched with a trailer&quot;.</source>
        <translation>No debe circular: escribir cómo sale, por ejemplo &quot;recogido con remolque&quot;.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::InstrumentsView</name>
    <message>
        <source>Calibration overdue since %1: its limit of error cannot be relied on</source>
        <translation>Calibración vencida desde el %1: no se puede confiar en su límite de error</translation>
    </message>
    <message>
        <source>No calibration is recorded; due on %1</source>
        <translation>Sin calibración anotada; toca el %1</translation>
    </message>
    <message>
        <source>Calibration due today</source>
        <translation>Calibración: toca hoy</translation>
    </message>
    <message>
        <source>Calibration due tomorrow, on %1</source>
        <translation>Calibración: toca mañana, el %1</translation>
    </message>
    <message>
        <source>Calibration due on %1, in %2 days</source>
        <translation>Calibración: toca el %1, dentro de %2 días</translation>
    </message>
    <message>
        <source>Calibrated on %1, no date set for the next time</source>
        <translation>Calibrado el %1, sin fecha para la próxima vez</translation>
    </message>
    <message>
        <source>No calibration is recorded</source>
        <translation>Sin calibración anotada</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, %2 a %3, %4</translation>
    </message>
    <message>
        <source>Choose what kind of instrument it is.</source>
        <translation>Elegir la clase de instrumento.</translation>
    </message>
    <message>
        <source>Another instrument for the same quantity has this name: choose another one.</source>
        <translation>Otro instrumento para la misma magnitud tiene este nombre: elegir otro.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>No longer used: %1</source>
        <translation>Ya no se usa: %1</translation>
    </message>
    <message>
        <source>In use again: %1</source>
        <translation>En uso otra vez: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Insulations</name>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquesa</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>azul claro</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>verde claro</translation>
    </message>
    <message>
        <source>colour not known</source>
        <translation>color no conocido</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <comment>base colour, tracer colour</comment>
        <translation>%1, trazo %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobMemoList</name>
    <message>
        <source>Memo kept</source>
        <translation>Nota guardada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobView</name>
    <message>
        <source>waits for %1</source>
        <translation>espera %1</translation>
    </message>
    <message>
        <source>the watch was forgotten</source>
        <translation>se olvidó parar el reloj</translation>
    </message>
    <message>
        <source>the watch runs</source>
        <translation>el reloj corre</translation>
    </message>
    <message>
        <source>first %1</source>
        <translation>primero %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Type what the task is, such as &quot;front brake&quot;.</source>
        <translation>Escribir cuál es la tarea, por ejemplo &quot;freno delantero&quot;.</translation>
    </message>
    <message>
        <source>Task kept</source>
        <translation>Tarea guardada</translation>
    </message>
    <message>
        <source>not fitted: %1</source>
        <translation>sin montar: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::KnowledgeView</name>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>par</translation>
    </message>
    <message>
        <source>part</source>
        <translation>recambio</translation>
    </message>
    <message>
        <source>wiring map</source>
        <translation>plano de cables</translation>
    </message>
    <message>
        <source>adjustment</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>held in jobs: %1</source>
        <translation>valió en órdenes: %1</translation>
    </message>
    <message>
        <source>Does not agree: %1</source>
        <translation>No concuerda: %1</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>El resto</translation>
    </message>
    <message>
        <source>Taken over: %1</source>
        <translation>Llevado: %1</translation>
    </message>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>No se puede escribir %1. Hacer sitio y probar otra vez.</translation>
    </message>
    <message>
        <source>typical of this model, look whether it is so here</source>
        <translation>típico de este modelo, mirar si aquí es así</translation>
    </message>
    <message>
        <source>this shop&apos;s record</source>
        <translation>registro de este taller</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LabelsView</name>
    <message>
        <source>Bag %1, all of it is on again</source>
        <translation>Bolsa %1, todo montado</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>Type a place on the sheet, such as 1.</source>
        <translation>Escribir un sitio de la hoja, por ejemplo 1.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LiftEar</name>
    <message>
        <source>a reading</source>
        <translation>una medida</translation>
    </message>
    <message>
        <source>the number of a bag</source>
        <translation>el número de una bolsa</translation>
    </message>
    <message>
        <source>a wire</source>
        <translation>un cable</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say: %2.</source>
        <translation>Oído &quot;%1&quot;. Aquí decir: %2.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LineBackView</name>
    <message>
        <source>How it runs was not written down: look at its photo.</source>
        <translation>No está anotado cómo va: mira la foto.</translation>
    </message>
    <message>
        <source>How it runs was not written down and there is no photo: look it up in the machine&apos;s manual.</source>
        <translation>No está anotado cómo va y no hay foto: míralo en el manual del vehículo.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MeasureView</name>
    <message>
        <source>none named</source>
        <translation>ninguno nombrado</translation>
    </message>
    <message>
        <source>%1, of the shop</source>
        <translation>%1, del taller</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>ningún instrumento nombrado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, assumed</source>
        <translation>%1: %2, supuesto</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>shop&apos;s record</source>
        <translation>taller</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calculado aquí</translation>
    </message>
    <message>
        <source>Type a value first; then the next one can be typed.</source>
        <translation>Escribir primero un valor; luego el siguiente.</translation>
    </message>
    <message>
        <source>mean of %1: %2, spread %3</source>
        <translation>media de %1: %2, dispersión %3</translation>
    </message>
    <message>
        <source>%1 % sure to be within: %2</source>
        <translation>seguro al %1 % de estar dentro: %2</translation>
    </message>
    <message>
        <source>source of the limits not named</source>
        <translation>fuente de los límites sin nombrar</translation>
    </message>
    <message>
        <source>No limits given: the value is kept without a verdict.</source>
        <translation>Sin límites: el valor se guarda sin veredicto.</translation>
    </message>
    <message>
        <source>No instrument named, so its uncertainty is not known: the value is kept without a verdict.</source>
        <translation>Ningún instrumento nombrado, así que no se sabe su incertidumbre: el valor se guarda sin veredicto.</translation>
    </message>
    <message>
        <source>What would settle it: %1</source>
        <translation>Qué lo aclararía: %1</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>media de %1</translation>
    </message>
    <message>
        <source>That cannot be entered here: type it.</source>
        <translation>Aquí no se puede poner: escribirlo.</translation>
    </message>
    <message>
        <source>The step has several torques: choose below which one is measured.</source>
        <translation>El paso tiene varios pares: elige abajo cuál se mide.</translation>
    </message>
    <message>
        <source>to be %1</source>
        <translation>debe ser %1</translation>
    </message>
    <message>
        <source>as the step says; %1 to %2, as far as a wrench by ISO 6789-1 may be off</source>
        <translation>según el paso; de %1 a %2, lo que puede desviarse una llave según ISO 6789-1</translation>
    </message>
    <message>
        <source>One reading stands for all %1: keep the one that is furthest off, or take each with Again.</source>
        <translation>Una lectura vale por los %1: guarda la más alejada, o toma cada una con «Otra vez».</translation>
    </message>
    <message>
        <source>as read; the instrument is not known, taken to be within %1: %2</source>
        <translation>según lo leído; el instrumento no se conoce, se supone dentro de %1: %2</translation>
    </message>
    <message>
        <source>Choose the unit that this was measured in.</source>
        <translation>Elige la unidad en que se midió.</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Quitada: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MemoPlayback</name>
    <message>
        <source>Place marked</source>
        <translation>Punto marcado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ModelsView</name>
    <message>
        <source>jobs: %1</source>
        <translation>órdenes: %1</translation>
    </message>
    <message>
        <source>This file cannot be read, or is no knowledge of a model: %1</source>
        <translation>Este archivo no se lee, o no es saber de un modelo: %1</translation>
    </message>
    <message>
        <source>%1 %2, facts: %3</source>
        <translation>%1 %2, datos: %3</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Aprendido: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::NeedsView</name>
    <message>
        <source>Do not start until this is on and all that follows is done.</source>
        <translation>No arrancar hasta que esto esté montado y todo lo que sigue, hecho.</translation>
    </message>
    <message>
        <source>Do not ride until this is on and all that follows is done.</source>
        <translation>No circular hasta que esto esté montado y todo lo que sigue, hecho.</translation>
    </message>
    <message>
        <source>Kept for the refit</source>
        <translation>Guardado para el montaje</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OrdersView</name>
    <message>
        <source>No supplier chosen</source>
        <translation>Sin proveedor elegido</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OwnersWord</name>
    <message>
        <source>called</source>
        <translation>llamó</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>escribió</translation>
    </message>
    <message>
        <source>stood here</source>
        <translation>estuvo aquí</translation>
    </message>
    <message>
        <source>Not wanted: %1</source>
        <translation>No querido: %1</translation>
    </message>
    <message>
        <source>Type who said no: the record names them.</source>
        <translation>Escribir quién dijo que no: el informe lo nombra.</translation>
    </message>
    <message>
        <source>Choose how it was said: called, wrote or stood here.</source>
        <translation>Elegir cómo se dijo: llamó, escribió o estuvo aquí.</translation>
    </message>
    <message>
        <source>Refusal kept</source>
        <translation>Negativa guardada</translation>
    </message>
    <message>
        <source>Type what it covers, such as &quot;front brake, tyres&quot;.</source>
        <translation>Escribir qué abarca, por ejemplo &quot;freno delantero, neumáticos&quot;.</translation>
    </message>
    <message>
        <source>Type who said so.</source>
        <translation>Escribir quién lo dijo.</translation>
    </message>
    <message>
        <source>Write the sum as digits, such as 120.50.</source>
        <translation>Escribir el importe en cifras, por ejemplo 120.50.</translation>
    </message>
    <message>
        <source>Write the currency in three letters, such as EUR.</source>
        <translation>Escribir la moneda en tres letras, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Approval kept</source>
        <translation>Aprobación guardada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartForm</name>
    <message>
        <source>Part</source>
        <translation>Recambio</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Sin decir</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Vale</translation>
    </message>
    <message>
        <source>After a change</source>
        <translation>Con cambio</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>No vale</translation>
    </message>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Escribir qué recambio es, por ejemplo &quot;latiguillo delantero&quot;.</translation>
    </message>
    <message>
        <source>Type the price as a number, such as 18.50.</source>
        <translation>Escribir el precio como número, por ejemplo 18.50.</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Escribir la moneda, por ejemplo EUR.</translation>
    </message>
    <message>
        <source>Type why, such as &quot;pivot hole 1 mm too small&quot;.</source>
        <translation>Escribir por qué, por ejemplo &quot;agujero del eje 1 mm pequeño&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Recambio guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartsList</name>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Escribir qué recambio es, por ejemplo &quot;latiguillo delantero&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Recambio guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoCapture</name>
    <message>
        <source>There is no camera here. Take the photo from a file.</source>
        <translation>Aquí no hay cámara. Tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La cámara se está abriendo.</translation>
    </message>
    <message>
        <source>This app may not use the camera. Allow it in the system&apos;s settings, or take the photo from a file.</source>
        <translation>Esta app no puede usar la cámara. Permitirlo en los ajustes del sistema, o tomar la foto de un archivo.</translation>
    </message>
    <message>
        <source>The disk is full: make room before you take more photos. Those that were taken are still here and are kept as soon as there is room.</source>
        <translation>El disco está lleno: hacer sitio antes de más fotos. Las hechas siguen aquí y se guardan en cuanto haya sitio.</translation>
    </message>
    <message>
        <source>Photo saved</source>
        <translation>Foto guardada</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoReader</name>
    <message>
        <source>no wire was found further on that side</source>
        <translation>por ese lado no se encontró más cable</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PlaceView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Say where that is known from, such as &quot;manual, page 7-12&quot;.</source>
        <translation>Decir de dónde se sabe, por ejemplo &quot;manual, página 7-12&quot;.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Give the size in millimetres, such as 6.3.</source>
        <translation>Dar el tamaño en milímetros, por ejemplo 6.3.</translation>
    </message>
    <message>
        <source>Terminal: %1</source>
        <translation>Terminal: %1</translation>
    </message>
    <message>
        <source>Give the size in square millimetres, such as 0.75.</source>
        <translation>Dar la sección en milímetros cuadrados, por ejemplo 0.75.</translation>
    </message>
    <message>
        <source>Wire size kept</source>
        <translation>Sección guardada</translation>
    </message>
    <message>
        <source>Function: %1</source>
        <translation>Función: %1</translation>
    </message>
    <message>
        <source>DIN number kept</source>
        <translation>Número DIN guardado</translation>
    </message>
    <message>
        <source>Tag kept</source>
        <translation>Marca guardada</translation>
    </message>
    <message>
        <source>%1: nothing there</source>
        <translation>%1: ahí no hay nada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProofsView</name>
    <message>
        <source>left out: %1</source>
        <translation>dejado: %1</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>probado: %1</translation>
    </message>
    <message>
        <source>proved by its reading, or said</source>
        <translation>probado por su lectura, o dicho</translation>
    </message>
    <message>
        <source>proved wire by wire, or said</source>
        <translation>probado cable a cable, o dicho</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>probado</translation>
    </message>
    <message numerus="yes">
        <source>%n proved</source>
        <translation>
            <numerusform>%n probado</numerusform>
            <numerusform>%n probados</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProveView</name>
    <message>
        <source>proved</source>
        <translation>probado</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>probado: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>dejado: %1</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>firmado por %1</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Probado</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;no road test before the tyres are here&quot;.</source>
        <translation>Escribir por qué se deja, por ejemplo &quot;sin prueba hasta tener los neumáticos&quot;.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>Type the name of the one who looked.</source>
        <translation>Escribir el nombre de quien miró.</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Firmado por %1</translation>
    </message>
    <message>
        <source>Not proved while this stands: %1. Put it right, or type why it is left out.</source>
        <translation>No probado mientras siga: %1. Arréglalo, o escribe por qué se omite.</translation>
    </message>
    <message>
        <source>No reading shows the torque: measure it, or type how it was tightened.</source>
        <translation>Ninguna lectura muestra el par: mídelo, o escribe cómo se apretó.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackView</name>
    <message>
        <source>tag %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>looks like place %1</source>
        <translation>igual que la vía %1</translation>
    </message>
    <message>
        <source>%1; not tagged</source>
        <translation>%1; sin marca</translation>
    </message>
    <message>
        <source>%1; tag %2</source>
        <translation>%1; marca %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackWalk</name>
    <message>
        <source>%1 matches</source>
        <translation>%1 coincide</translation>
    </message>
    <message>
        <source>%1 does not match</source>
        <translation>%1 no coincide</translation>
    </message>
    <message>
        <source>swapped with %1</source>
        <translation>cambiado con %1</translation>
    </message>
    <message>
        <source>%1 swapped with %2</source>
        <translation>%1 cambiado con %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RefitView</name>
    <message>
        <source>%1 of %2 wires read back</source>
        <translation>%1 de %2 cables releídos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the task %1</source>
        <translation>la tarea %1</translation>
    </message>
    <message>
        <source>Refitted: %1</source>
        <translation>Montado: %1</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tarea retomada</translation>
    </message>
    <message>
        <source>Order changed</source>
        <translation>Orden cambiado</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Sin montar: %1</translation>
    </message>
    <message>
        <source>Part not fitted: %1 (%2)</source>
        <translation>Recambio sin montar: %1 (%2)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RestoreView</name>
    <message>
        <source>%1, %2: no backup, or damaged at its beginning</source>
        <translation>%1, %2: no es una copia, o está dañada al principio</translation>
    </message>
    <message>
        <source>%1, %2, sealed with a passphrase</source>
        <translation>%1, %2, sellada con frase secreta</translation>
    </message>
    <message numerus="yes">
        <source>%n jobs</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>A shop that cannot be read whole</source>
        <translation>Un taller que no se lee entero</translation>
    </message>
    <message>
        <source>%1, last worked on %2</source>
        <translation>%1, último trabajo %2</translation>
    </message>
    <message>
        <source>This file is no backup of a shop, or damaged at its very beginning. Choose another one.</source>
        <translation>Este archivo no es la copia de un taller, o está dañado desde el principio. Elegir otro.</translation>
    </message>
    <message numerus="yes">
        <source>Brought back as it was on %1: %n entries.</source>
        <translation>
            <numerusform>Recuperado como estaba el %1: %n entrada.</numerusform>
            <numerusform>Recuperado como estaba el %1: %n entradas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places of the backup could not be read.</source>
        <translation>
            <numerusform>%n parte de la copia no se pudo leer.</numerusform>
            <numerusform>%n partes de la copia no se pudieron leer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos or memos are in none of the backups here.</source>
        <translation>
            <numerusform>%n foto o nota no está en ninguna de las copias de aquí.</numerusform>
            <numerusform>%n fotos o notas no están en ninguna de las copias de aquí.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things in it are missing or damaged.</source>
        <translation>
            <numerusform>Falta o está dañada %n cosa.</numerusform>
            <numerusform>Faltan o están dañadas %n cosas.</numerusform>
        </translation>
    </message>
    <message>
        <source>This passphrase does not fit: look at each letter, large or small. If it is right, the file is damaged at its beginning.</source>
        <translation>Esta frase no vale: mirar cada letra, mayúscula o minúscula. Si es la buena, el archivo está dañado al principio.</translation>
    </message>
    <message>
        <source>Nothing of this backup can be read any more. Choose another one; this device holds what it held before.</source>
        <translation>De esta copia ya no se lee nada. Elegir otra; en este dispositivo todo sigue como antes.</translation>
    </message>
    <message numerus="yes">
        <source>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</source>
        <translation>
            <numerusform>Parte de sus fotos y notas está en copias anteriores, de las que %n no está en la misma carpeta. Ponerla ahí, o recuperar lo que hay.</numerusform>
            <numerusform>Parte de sus fotos y notas está en copias anteriores, de las que %n no están en la misma carpeta. Ponerlas ahí, o recuperar lo que hay.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup is damaged or cut short. If there is another one, take that. Nothing was changed on this device.</source>
        <translation>La copia está dañada o cortada. Si hay otra, usar esa. En este dispositivo no se cambió nada.</translation>
    </message>
    <message>
        <source>There is no room on this device for the shop. Make room, then try again.</source>
        <translation>En este dispositivo no hay sitio para el taller. Hacer sitio y probar otra vez.</translation>
    </message>
    <message>
        <source>The backup was written by a newer version. Bring this app up to date.</source>
        <translation>La copia es de una versión más nueva. Actualizar esta aplicación.</translation>
    </message>
    <message>
        <source>The file is not there any more. Put the stick or the card in again.</source>
        <translation>El archivo ya no está. Volver a meter la memoria o la tarjeta.</translation>
    </message>
    <message>
        <source>What can be read of the shop on this device</source>
        <translation>Lo legible del taller de este dispositivo</translation>
    </message>
    <message>
        <source>The shop was written by a newer version. Bring this app up to date.</source>
        <translation>El taller lo escribió una versión más nueva. Actualizar esta aplicación.</translation>
    </message>
    <message numerus="yes">
        <source>A new shop of what can be read: %n entries.</source>
        <translation>
            <numerusform>Un taller nuevo con lo legible: %n entrada.</numerusform>
            <numerusform>Un taller nuevo con lo legible: %n entradas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them only the copies beside it still had.</source>
        <translation>
            <numerusform>%n de ellas solo estaba en las copias de al lado.</numerusform>
            <numerusform>%n de ellas solo estaban en las copias de al lado.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of the shop on this device can be read any more. Bring a backup back.</source>
        <translation>Del taller de este dispositivo ya no se lee nada. Recuperar una copia.</translation>
    </message>
    <message>
        <source>The app opens it at its next start.</source>
        <translation>La aplicación lo abre la próxima vez que se inicie.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoadView</name>
    <message>
        <source>after %1 %2</source>
        <translation>tras %1 %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>para el %1</translation>
    </message>
    <message>
        <source>seen to</source>
        <translation>atendido</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prueba en carretera</translation>
    </message>
    <message>
        <source>Type how far it was ridden, such as 4.</source>
        <translation>Escribir cuánto se recorrió, por ejemplo 4.</translation>
    </message>
    <message>
        <source>Road test kept</source>
        <translation>Prueba guardada</translation>
    </message>
    <message>
        <source>Type what is to be looked at again, such as &quot;axle nut&quot;.</source>
        <translation>Escribir qué mirar otra vez, por ejemplo &quot;tuerca del eje&quot;.</translation>
    </message>
    <message>
        <source>Type the distance as a number, such as 50.</source>
        <translation>Escribir la distancia como número, por ejemplo 50.</translation>
    </message>
    <message>
        <source>Type whole days, such as 14.</source>
        <translation>Escribir días enteros, por ejemplo 14.</translation>
    </message>
    <message>
        <source>Recheck kept</source>
        <translation>Revisión guardada</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Atendido</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundListsView</name>
    <message>
        <source>looked over</source>
        <translation>repasado</translation>
    </message>
    <message>
        <source>tried at take-in</source>
        <translation>probado en la recepción</translation>
    </message>
    <message>
        <source>photographed at take-in</source>
        <translation>fotografiado en la recepción</translation>
    </message>
    <message>
        <source>checks: %1, %2</source>
        <translation>controles: %1, %2</translation>
    </message>
    <message>
        <source>Type the check and the part of the machine that it belongs to.</source>
        <translation>Escribir el control y la parte del vehículo.</translation>
    </message>
    <message>
        <source>This check stands in the list already.</source>
        <translation>Este control ya está en la lista.</translation>
    </message>
    <message>
        <source>Check added</source>
        <translation>Control añadido</translation>
    </message>
    <message>
        <source>Check taken out</source>
        <translation>Control quitado</translation>
    </message>
    <message>
        <source>Check changed</source>
        <translation>Control cambiado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundView</name>
    <message>
        <source>fine</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>sin hacer</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>finding: %1</source>
        <translation>hallazgo: %1</translation>
    </message>
    <message>
        <source>Fine: %1</source>
        <translation>Bien: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Sin hacer: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundsView</name>
    <message>
        <source>%1 of %2 to go</source>
        <translation>faltan %1 de %2</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>hallazgos: %1</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>sin hacer: %1</translation>
    </message>
    <message>
        <source>all fine</source>
        <translation>todo bien</translation>
    </message>
    <message>
        <source>The shop&apos;s lists hold no check for this machine: add some in Settings.</source>
        <translation>Las listas del taller no tienen controles para este vehículo: añadirlos en Ajustes.</translation>
    </message>
    <message>
        <source>Round begun</source>
        <translation>Ronda empezada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ScanView</name>
    <message>
        <source>This picture cannot be read: %1</source>
        <translation>Esta imagen no se lee: %1</translation>
    </message>
    <message>
        <source>No code is read in this picture: take it closer and straight on.</source>
        <translation>En esta imagen no se lee ningún código: acercarse y enfocar de frente.</translation>
    </message>
    <message>
        <source>This label is of a job that is not in this shop.</source>
        <translation>Esta etiqueta es de una orden que no está en este taller.</translation>
    </message>
    <message>
        <source>Job %1 has no bag %2 any more.</source>
        <translation>La orden %1 ya no tiene bolsa %2.</translation>
    </message>
    <message>
        <source>Bag %1: %2</source>
        <translation>Bolsa %1: %2</translation>
    </message>
    <message>
        <source>No open job waits for a part with the number %1.</source>
        <translation>Ninguna orden abierta espera un recambio con el número %1.</translation>
    </message>
    <message>
        <source>Parts with the number %1</source>
        <translation>Recambios con el número %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SettleView</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;hose renewed, brake bled&quot;.</source>
        <translation>Escribir qué se hizo, por ejemplo &quot;latiguillo nuevo, freno purgado&quot;.</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SheetsView</name>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>No se puede escribir %1. Hacer sitio y probar otra vez.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Línea %1: %2</translation>
    </message>
    <message>
        <source>cannot be brought in</source>
        <translation>no se puede traer</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Este archivo no se lee: %1</translation>
    </message>
    <message>
        <source>Brought in: %1</source>
        <translation>Traído: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopHome</name>
    <message>
        <source>Machine not described yet</source>
        <translation>Vehículo aún sin describir</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSession</name>
    <message>
        <source>Type the name of the one who works here.</source>
        <translation>Escribir el nombre de quien trabaja aquí.</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSettings</name>
    <message>
        <source>As the device</source>
        <translation>Como el dispositivo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SignatureView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type who signs.</source>
        <translation>Escribir quién firma.</translation>
    </message>
    <message>
        <source>Sign in the field with a finger.</source>
        <translation>Firmar en el campo con un dedo.</translation>
    </message>
    <message>
        <source>The signature cannot be made into a picture. Sign once more.</source>
        <translation>La firma no da una imagen. Firmar otra vez.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StripView</name>
    <message>
        <source>Strip step</source>
        <translation>Paso de desmontaje</translation>
    </message>
    <message>
        <source>Correction of a strip step</source>
        <translation>Corrección de un paso de desmontaje</translation>
    </message>
    <message>
        <source>Choose or type what it is, such as &quot;screw&quot;.</source>
        <translation>Elegir o escribir qué es, por ejemplo &quot;tornillo&quot;.</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;unplug 6-place connector&quot;.</source>
        <translation>Escribir qué se hizo, por ejemplo &quot;soltar el conector de 6 vías&quot;.</translation>
    </message>
    <message>
        <source>Step %1 kept</source>
        <translation>Paso %1 guardado</translation>
    </message>
    <message>
        <source>Step corrected</source>
        <translation>Paso corregido</translation>
    </message>
    <message>
        <source>%1: %2 of %3 on the photo</source>
        <translation>%1: %2 de %3 en la foto</translation>
    </message>
    <message>
        <source>All %1 are on a photo. Touch a ring to take it away.</source>
        <translation>Los %1 están en una foto. Tocar un círculo para quitarlo.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>En esta foto no se pudo seguir ningún cable. Pasar el dedo por los cables.</translation>
    </message>
    <message>
        <source>Where ? stands no wire could be followed: if one belongs here, stroke instead.</source>
        <translation>Donde está ? no se pudo seguir un cable: si hay uno, hacer un trazo.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n cable confirmado</numerusform>
            <numerusform>%n cables confirmados</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Ya no confirmado</translation>
    </message>
    <message>
        <source>Turned round</source>
        <translation>Vuelta dada</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Quitado</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>Place empty</source>
        <translation>Vía vacía</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Segundo cable de la vía anterior</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>En una vía propia</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Wires of %1</source>
        <translation>Cables de %1</translation>
    </message>
    <message>
        <source>%1 places read, %2 places in all: add those that are missing or empty</source>
        <translation>%1 vías leídas, %2 en total: añadir las que faltan o están vacías</translation>
    </message>
    <message>
        <source>%1 places read, only %2 in all: take out what is no wire of it</source>
        <translation>%1 vías leídas, solo %2 en total: quitar lo que no es cable suyo</translation>
    </message>
    <message>
        <source>No wire could be followed from there. Stroke across the wires instead.</source>
        <translation>Desde ahí no se pudo seguir ningún cable. Pasar mejor el dedo por los cables.</translation>
    </message>
    <message>
        <source>Followed from the connector: %1, in their order. Touch each that belongs here.</source>
        <translation>Seguidos desde el conector: %1, en su orden. Tocar los que van aquí.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here, or draw a line across the connector&apos;s mouth: then only its wires are left.</source>
        <translation>Seguidos: %1. Tocar los que van aquí, o trazar una línea por la boca del conector: quedan solo sus cables.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TakeIn</name>
    <message>
        <source>Type the make or the model, whatever is readable.</source>
        <translation>Escribir la marca o el modelo, lo que se lea.</translation>
    </message>
    <message>
        <source>The year is a number from %1 to %2; leave it empty if it is not known.</source>
        <translation>El año es un número de %1 a %2; dejarlo vacío si no se sabe.</translation>
    </message>
    <message>
        <source>A number that is not below 0.</source>
        <translation>Un número no menor que 0.</translation>
    </message>
    <message>
        <source>Type why it is here, such as &quot;no lights&quot;.</source>
        <translation>Escribir por qué está aquí, por ejemplo &quot;sin luces&quot;.</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; posible: %2</translation>
    </message>
    <message>
        <source>Check digit fits.</source>
        <translation>El dígito de control cuadra.</translation>
    </message>
    <message>
        <source>Taken as an older number without check digit.</source>
        <translation>Tomado como número antiguo sin dígito de control.</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Vuelve de %1</translation>
    </message>
    <message>
        <source>Look at it once more: %1</source>
        <translation>Mírelo otra vez: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TaskView</name>
    <message>
        <source>%1 of %2 estimated</source>
        <translation>%1 de %2 estimados</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminada</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>Watch stopped</source>
        <translation>Reloj parado</translation>
    </message>
    <message>
        <source>Watch started</source>
        <translation>Reloj en marcha</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Escribir minutos enteros, por ejemplo 45.</translation>
    </message>
    <message>
        <source>Time corrected</source>
        <translation>Tiempo corregido</translation>
    </message>
    <message>
        <source>Type what it waits for, such as &quot;brake shoes&quot;.</source>
        <translation>Escribir qué espera, por ejemplo &quot;zapatas de freno&quot;.</translation>
    </message>
    <message>
        <source>Task waits</source>
        <translation>La tarea espera</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tarea retomada</translation>
    </message>
    <message>
        <source>Task finished</source>
        <translation>Tarea terminada</translation>
    </message>
    <message>
        <source>%1 already comes after %2: take that back first.</source>
        <translation>%1 ya viene después de %2: quitar eso primero.</translation>
    </message>
    <message>
        <source>Order of tasks kept</source>
        <translation>Orden de las tareas guardado</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ViewsView</name>
    <message>
        <source>photos: %1</source>
        <translation>fotos: %1</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>pasada</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::WireRows</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>ningún cable encontrado</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmado</translation>
    </message>
    <message>
        <source>sure, of the side that is seen</source>
        <translation>seguro, del lado que se ve</translation>
    </message>
    <message>
        <source>turn the wire, a tracer may lie on its other side</source>
        <translation>girar el cable, en su otro lado puede haber un trazo</translation>
    </message>
</context>
</TS>

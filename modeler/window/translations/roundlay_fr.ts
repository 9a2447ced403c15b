<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>Application</name>
    <message>
        <source>Plans, shows and checks a shell of hewn logs.</source>
        <translation>Dessine, montre et vérifie une coque de pièces équarries.</translation>
    </message>
    <message>
        <source>A document to open</source>
        <translation>Un document à ouvrir</translation>
    </message>
</context>
<context>
    <name>CutListPanel</name>
    <message>
        <source>every piece</source>
        <translation>toutes les pièces</translation>
    </message>
    <message>
        <source>distinct pieces</source>
        <translation>pièces distinctes</translation>
    </message>
    <message>
        <source>sticks to order</source>
        <translation>bois à commander</translation>
    </message>
    <message>
        <source>pegs</source>
        <translation>chevilles</translation>
    </message>
    <message>
        <source>totals</source>
        <translation>totaux</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Quelle liste</translation>
    </message>
    <message>
        <source>Filter: part of a tag, a kind, a size</source>
        <translation>Filtrer : partie d’un repère, sorte, dimension</translation>
    </message>
    <message>
        <source>Filter the list</source>
        <translation>Filtrer la liste</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>Copy the list for a spreadsheet</source>
        <translation>Copier la liste pour un tableur</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Liste de débit</translation>
    </message>
    <message>
        <source>%1 pieces, %2 distinct, %3</source>
        <translation>%1 pièces, %2 différentes, %3</translation>
    </message>
    <message>
        <source>, estimated %1</source>
        <translation>, estimées : %1</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Untitled shell</source>
        <translation>Coque sans titre</translation>
    </message>
    <message>
        <source>The text has errors; put them right first.</source>
        <translation>Le texte contient des erreurs ; corrigez-les d’abord.</translation>
    </message>
    <message>
        <source>That does not fit there.</source>
        <translation>Cela ne tient pas à cet endroit.</translation>
    </message>
</context>
<context>
    <name>DrawingView</name>
    <message>
        <source>Exact length</source>
        <translation>Longueur exacte</translation>
    </message>
    <message>
        <source>Type the exact length and press Enter</source>
        <translation>Tapez la longueur exacte puis Entrée</translation>
    </message>
</context>
<context>
    <name>ElevationView</name>
    <message>
        <source>Wall %1 from outside, %2</source>
        <translation>Mur %1 vu de dehors, %2</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Élévation</translation>
    </message>
    <message>
        <source>The chosen wall from outside. Page Up and Page Down choose an opening, arrow keys move it, with Ctrl they size it.</source>
        <translation>Le mur choisi, vu de dehors. Page haut et Page bas choisissent une ouverture, les flèches la déplacent, avec Ctrl elles la dimensionnent.</translation>
    </message>
    <message>
        <source>Drag; type an exact length; Alt lets go of the round lines</source>
        <translation>Tirez ; tapez une longueur exacte ; Alt libère des lignes de rang</translation>
    </message>
    <message>
        <source>Move opening</source>
        <translation>Déplacer l’ouverture</translation>
    </message>
    <message>
        <source>Size opening</source>
        <translation>Dimensionner l’ouverture</translation>
    </message>
    <message>
        <source>Add door</source>
        <translation>Ajouter une porte</translation>
    </message>
    <message>
        <source>Add window</source>
        <translation>Ajouter une fenêtre</translation>
    </message>
    <message>
        <source>Remove opening</source>
        <translation>Ôter l’ouverture</translation>
    </message>
</context>
<context>
    <name>ExportDialog</name>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exporter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>&amp;Open the folder</source>
        <translation>&amp;Ouvrir le dossier</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>as the units</source>
        <translation>selon les unités</translation>
    </message>
    <message>
        <source>&amp;Paper of the sheets</source>
        <translation>&amp;Papier des fiches</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Dossier</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Choisir…</translation>
    </message>
    <message>
        <source>Export to</source>
        <translation>Exporter vers</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>%1 files were written.</source>
        <translation>%1 fichiers ont été écrits.</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Cannot be built</source>
        <translation>Ne peut pas se bâtir</translation>
    </message>
    <message>
        <source>To decide</source>
        <translation>À décider</translation>
    </message>
    <message>
        <source>Worth knowing</source>
        <translation>Bon à savoir</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>; expected %1</source>
        <translation> ; attendu : %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>Nothing is in the way of this shell.</source>
        <translation>Rien ne s&apos;oppose à cette coque.</translation>
    </message>
</context>
<context>
    <name>JointPage</name>
    <message>
        <source>Joint</source>
        <translation>Assemblage</translation>
    </message>
    <message>
        <source>The logs of one corner, lifted apart</source>
        <translation>Les pièces d’un angle, soulevées</translation>
    </message>
    <message>
        <source>full dovetail</source>
        <translation>queue d’aronde</translation>
    </message>
    <message>
        <source>half dovetail</source>
        <translation>demi-queue d’aronde</translation>
    </message>
    <message>
        <source>square lap</source>
        <translation>mi-bois droit</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>selon les pentes</translation>
    </message>
    <message>
        <source>Lift the logs apart</source>
        <translation>Soulever les pièces</translation>
    </message>
    <message>
        <source>C&amp;orner</source>
        <translation>&amp;Angle</translation>
    </message>
    <message>
        <source>&amp;Lift</source>
        <translation>&amp;Soulever</translation>
    </message>
    <message>
        <source>&amp;Notch</source>
        <translation>&amp;Entaille</translation>
    </message>
    <message>
        <source>S&amp;lope</source>
        <translation>&amp;Pente</translation>
    </message>
    <message>
        <source>An inside corner: the log ends show indoors.</source>
        <translation>Un angle rentrant : les bouts se voient à l’intérieur.</translation>
    </message>
    <message>
        <source>Change notch of corner %1</source>
        <translation>Changer l’entaille de l’angle %1</translation>
    </message>
    <message>
        <source>this corner</source>
        <translation>cet angle</translation>
    </message>
    <message>
        <source>the whole shell</source>
        <translation>toute la coque</translation>
    </message>
    <message>
        <source>the chosen log</source>
        <translation>la pièce choisie</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>selle</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>&amp;Changer</translation>
    </message>
    <message>
        <source>&amp;Along the log</source>
        <translation>&amp;Le long de la pièce</translation>
    </message>
    <message>
        <source>Ac&amp;ross it</source>
        <translation>En t&amp;ravers</translation>
    </message>
    <message>
        <source>Lift the logs apart by itself</source>
        <translation>Soulever les pièces tout seul</translation>
    </message>
    <message>
        <source>Change notch of the shell</source>
        <translation>Changer l’entaille de la coque</translation>
    </message>
    <message>
        <source>Change notch of log %1-%2</source>
        <translation>Changer l’entaille de la pièce %1-%2</translation>
    </message>
    <message>
        <source>Each tail thickens toward its end by %1: locked against pulling out.</source>
        <translation>Chaque queue s’épaissit vers son bout de %1 : elle ne peut sortir.</translation>
    </message>
    <message>
        <source>Nothing but pegs keeps these tails from pulling out.</source>
        <translation>Seules les chevilles empêchent ces queues de sortir.</translation>
    </message>
    <message>
        <source>%1: %2. Alt lets go of round slopes, Escape gives up.</source>
        <translation>%1 : %2. Alt quitte les pentes rondes, Échap abandonne.</translation>
    </message>
    <message>
        <source>Along the log</source>
        <translation>Le long de la pièce</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>En travers</translation>
    </message>
</context>
<context>
    <name>LogFields</name>
    <message>
        <source>Stated of the whole log</source>
        <translation>Indiqué pour la pièce entière</translation>
    </message>
    <message>
        <source>Mark on the log</source>
        <translation>Marque sur la pièce</translation>
    </message>
    <message>
        <source>&amp;Mark on the log</source>
        <translation>&amp;Marque sur la pièce</translation>
    </message>
    <message>
        <source>as the wall</source>
        <translation>comme le mur</translation>
    </message>
    <message>
        <source>&amp;Butt height</source>
        <translation>Hauteur du &amp;gros bout</translation>
    </message>
    <message>
        <source>&amp;Tip height</source>
        <translation>Hauteur du &amp;petit bout</translation>
    </message>
    <message>
        <source>Butt &amp;width</source>
        <translation>&amp;Largeur du gros bout</translation>
    </message>
    <message>
        <source>Tip wi&amp;dth</source>
        <translation>La&amp;rgeur du petit bout</translation>
    </message>
    <message>
        <source>B&amp;ow</source>
        <translation>&amp;Cintrage</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Butt l&amp;ies</source>
        <translation>Gros &amp;bout</translation>
    </message>
    <message>
        <source>by turns</source>
        <translation>en alternance</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation>&amp;Façon</translation>
    </message>
    <message>
        <source>as the shell</source>
        <translation>comme la coque</translation>
    </message>
    <message>
        <source>hewn</source>
        <translation>équarrie</translation>
    </message>
    <message>
        <source>sawn</source>
        <translation>sciée</translation>
    </message>
    <message>
        <source>peeled</source>
        <translation>écorcée</translation>
    </message>
    <message>
        <source>F&amp;abric</source>
        <translation>&amp;État</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuve</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>conservée</translation>
    </message>
    <message>
        <source>patched</source>
        <translation>réparée</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>remplacée</translation>
    </message>
</context>
<context>
    <name>LogPanel</name>
    <message>
        <source>Wall</source>
        <translation>Mur</translation>
    </message>
    <message>
        <source>&amp;Length outside</source>
        <translation>&amp;Longueur au dehors</translation>
    </message>
    <message>
        <source>Numbers of what is chosen</source>
        <translation>Chiffres de ce qui est choisi</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Ouverture</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>door</source>
        <translation>porte</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>From the &amp;left</source>
        <translation>Depuis la &amp;gauche</translation>
    </message>
    <message>
        <source>&amp;Sill</source>
        <translation>&amp;Allège</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Largeur</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Hauteur</translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation>Rien de choisi</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Angle %1</translation>
    </message>
    <message>
        <source>Choose a log, an opening, a wall or a corner in any view.</source>
        <translation>Choisissez une pièce, une ouverture, un mur ou un angle dans une vue.</translation>
    </message>
    <message>
        <source>Opening in wall %1</source>
        <translation>Ouverture du mur %1</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Change opening</source>
        <translation>Changer l’ouverture</translation>
    </message>
    <message>
        <source>Name opening</source>
        <translation>Nommer l’ouverture</translation>
    </message>
    <message>
        <source>Size wall</source>
        <translation>Dimensionner le mur</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>%1 × %2, %3 long</source>
        <translation>%1 × %2, longueur %3</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Weight, estimated</source>
        <translation>Masse, estimée</translation>
    </message>
    <message>
        <source>Butt</source>
        <translation>Gros bout</translation>
    </message>
    <message>
        <source>Left end</source>
        <translation>Bout gauche</translation>
    </message>
    <message>
        <source>Right end</source>
        <translation>Bout droit</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Au-dessus</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Au-dessous</translation>
    </message>
    <message>
        <source>Notched left to</source>
        <translation>Entaillée à gauche avec</translation>
    </message>
    <message>
        <source>Notched right to</source>
        <translation>Entaillée à droite avec</translation>
    </message>
    <message>
        <source>Raised as number</source>
        <translation>Numéro au levage</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Tailles</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Equal to</source>
        <translation>Égale à</translation>
    </message>
    <message>
        <source>State log %1</source>
        <translation>Indiquer la pièce %1</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Façon</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>État</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Coque</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Élévation</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Liste de débit</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Fiche de taille</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Choix</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Assemblage</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>%1[*] — roundlay</source>
        <translation>%1[*] — roundlay</translation>
    </message>
    <message>
        <source>Cannot be built: see the findings</source>
        <translation>Ne peut pas se bâtir : voyez les constats</translation>
    </message>
    <message>
        <source>%1 pieces, %2 rounds, worked out in %3 ms</source>
        <translation>%1 pièces, %2 rangs, calculés en %3 ms</translation>
    </message>
    <message>
        <source>Show feet and inches</source>
        <translation>Montrer pieds et pouces</translation>
    </message>
    <message>
        <source>Show millimetres</source>
        <translation>Montrer des millimètres</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In the views&lt;/h3&gt;&lt;p&gt;Plan: Page Up and Page Down choose a wall, arrow keys move it.&lt;br&gt;Elevation: Page Up and Page Down choose an opening, arrow keys move it, with Ctrl they size it, with Shift by more.&lt;br&gt;Model: arrow keys turn, with Shift they move.&lt;br&gt;Cut sheet: Page Up and Page Down turn pages.&lt;br&gt;Everywhere: plus and minus zoom, Home fits. While dragging, digits type an exact length, Escape gives up, Alt lets go of the lines.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans les vues&lt;/h3&gt;&lt;p&gt;Plan : Page haut et Page bas choisissent un mur, les flèches le déplacent.&lt;br&gt;Élévation : Page haut et Page bas choisissent une ouverture, les flèches la déplacent, avec Ctrl elles la dimensionnent, avec Maj de davantage.&lt;br&gt;Modèle : les flèches tournent, avec Maj elles déplacent.&lt;br&gt;Fiche de taille : Page haut et Page bas tournent les pages.&lt;br&gt;Partout : plus et moins changent l’échelle, Origine montre tout. Pendant qu’on tire, des chiffres donnent une longueur exacte, Échap renonce, Alt libère des lignes.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Keyboard</source>
        <translation>Clavier</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Raccourcis clavier</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>About roundlay</source>
        <translation>À propos de roundlay</translation>
    </message>
    <message>
        <source>&lt;h3&gt;roundlay %1&lt;/h3&gt;&lt;p&gt;Hewn-log shells as one solid model: plans, cut sheets, cut lists.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty. Weights and spans are estimates; local code and a licensed professional decide.&lt;/p&gt;&lt;p&gt;Drawn by: %2&lt;/p&gt;</source>
        <translation>&lt;h3&gt;roundlay %1&lt;/h3&gt;&lt;p&gt;Des coques de pièces équarries en un seul modèle solide : plans, fiches de taille, listes de débit.&lt;/p&gt;&lt;p&gt;Logiciel libre sous la licence publique générale GNU, version 3 ou ultérieure, sans aucune garantie. Masses et portées sont des estimations ; le code local et un professionnel agréé décident.&lt;/p&gt;&lt;p&gt;Dessiné par : %2&lt;/p&gt;</translation>
    </message>
    <message>
        <source>roundlay documents (*%1)</source>
        <translation>Documents roundlay (*%1)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>Enregistrer ailleurs…</translation>
    </message>
    <message>
        <source>Save the document</source>
        <translation>Enregistrer le document</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Travail non enregistré</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 contient des changements non enregistrés.</translation>
    </message>
    <message>
        <source>Save them before it closes?</source>
        <translation>Les enregistrer avant de fermer ?</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Jeter</translation>
    </message>
    <message>
        <source>&amp;Go on working</source>
        <translation>&amp;Continuer à travailler</translation>
    </message>
    <message>
        <source>Open a document</source>
        <translation>Ouvrir un document</translation>
    </message>
    <message>
        <source>%1-export</source>
        <translation>%1-export</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept aside: the disk does not take it. Save soon, elsewhere.</source>
        <translation>Le travail non enregistré ne peut pas être mis de côté : le disque le refuse. Enregistrez bientôt, ailleurs.</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by something else.</source>
        <translation>%1 a été changé sur le disque par autre chose.</translation>
    </message>
    <message>
        <source>Load it</source>
        <translation>Le charger</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Garder le mien</translation>
    </message>
    <message>
        <source>roundlay ended badly while %1 had unsaved changes.</source>
        <translation>roundlay s’est mal terminé alors que %1 contenait des changements non enregistrés.</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>Récupérer</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;New shell…</source>
        <translation>&amp;Nouvelle coque…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ouvrir un document &amp;récent</translation>
    </message>
    <message>
        <source>Open a &amp;demo</source>
        <translation>Ouvrir un &amp;exemple</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>E&amp;xporter…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print cut sheets…</source>
        <translation>&amp;Imprimer les fiches de taille…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>&amp;Copy the cut list</source>
        <translation>&amp;Copier la liste de débit</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>&amp;Next log</source>
        <translation>Pièce &amp;suivante</translation>
    </message>
    <message>
        <source>Ctrl+.</source>
        <translation>Ctrl+.</translation>
    </message>
    <message>
        <source>&amp;Previous log</source>
        <translation>Pièce &amp;précédente</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>Choose n&amp;othing</source>
        <translation>Ne &amp;rien choisir</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>&amp;Shell</source>
        <translation>&amp;Coque</translation>
    </message>
    <message>
        <source>Add a &amp;window to the wall</source>
        <translation>Ajouter une &amp;fenêtre au mur</translation>
    </message>
    <message>
        <source>Ctrl+W, W</source>
        <translation>Ctrl+W, W</translation>
    </message>
    <message>
        <source>Add a &amp;door to the wall</source>
        <translation>Ajouter une &amp;porte au mur</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Move the wall &amp;outward</source>
        <translation>Déplacer le mur vers l’&amp;extérieur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Up</source>
        <translation>Ctrl+Shift+Up</translation>
    </message>
    <message>
        <source>Move the wall &amp;inward</source>
        <translation>Déplacer le mur vers l’&amp;intérieur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down</source>
        <translation>Ctrl+Shift+Down</translation>
    </message>
    <message>
        <source>Switch &amp;units</source>
        <translation>Changer d’&amp;unités</translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation>Ctrl+U</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Vue</translation>
    </message>
    <message>
        <source>&amp;Look from</source>
        <translation>&amp;Regarder depuis</translation>
    </message>
    <message>
        <source>South-&amp;east</source>
        <translation>Le sud-&amp;est</translation>
    </message>
    <message>
        <source>South-&amp;west</source>
        <translation>Le sud-&amp;ouest</translation>
    </message>
    <message>
        <source>North-e&amp;ast</source>
        <translation>Le nord-e&amp;st</translation>
    </message>
    <message>
        <source>North-wes&amp;t</source>
        <translation>Le nord-o&amp;uest</translation>
    </message>
    <message>
        <source>&amp;South</source>
        <translation>Le &amp;sud</translation>
    </message>
    <message>
        <source>&amp;North</source>
        <translation>Le &amp;nord</translation>
    </message>
    <message>
        <source>Eas&amp;t</source>
        <translation>L’es&amp;t</translation>
    </message>
    <message>
        <source>Wes&amp;t</source>
        <translation>L’&amp;ouest</translation>
    </message>
    <message>
        <source>&amp;Above</source>
        <translation>Le &amp;dessus</translation>
    </message>
    <message>
        <source>&amp;Fit everything</source>
        <translation>&amp;Tout montrer</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>&amp;Play the raise</source>
        <translation>&amp;Jouer le levage</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Colour the model</source>
        <translation>&amp;Colorer le modèle</translation>
    </message>
    <message>
        <source>by &amp;wall</source>
        <translation>par &amp;mur</translation>
    </message>
    <message>
        <source>by &amp;finding</source>
        <translation>par &amp;constat</translation>
    </message>
    <message>
        <source>by &amp;equal pieces</source>
        <translation>par pièces &amp;égales</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Panneaux</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Apparence</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claire</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Keyboard</source>
        <translation>&amp;Clavier</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>&amp;About roundlay</source>
        <translation>À &amp;propos de roundlay</translation>
    </message>
    <message>
        <source>by &amp;kept and new</source>
        <translation>par &amp;neuf et ancien</translation>
    </message>
    <message>
        <source>Re&amp;move opening or partition</source>
        <translation>Ô&amp;ter l’ouverture ou la cloison</translation>
    </message>
    <message>
        <source>Add a &amp;partition to the wall</source>
        <translation>Ajouter une &amp;cloison au mur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation>Ctrl+Shift+I</translation>
    </message>
</context>
<context>
    <name>MeasureEdit</name>
    <message>
        <source>%1; expected %2</source>
        <translation>%1 ; attendu : %2</translation>
    </message>
</context>
<context>
    <name>ModelPage</name>
    <message>
        <source>This machine draws no OpenGL 3.3, so the model cannot be shown here. Plan, elevation, sheets and lists work all the same; a driver such as Mesa&apos;s software renderer would bring the model back.</source>
        <translation>Cette machine ne dessine pas OpenGL 3.3 : le modèle ne peut pas être montré ici. Plan, élévation, fiches et listes fonctionnent quand même ; un pilote tel que le rendu logiciel de Mesa ramènerait le modèle.</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>The shell in space. Arrow keys turn it, with Shift they move it, plus and minus zoom.</source>
        <translation>La coque dans l’espace. Les flèches la tournent, avec Maj elles la déplacent, plus et moins l’agrandissent ou la réduisent.</translation>
    </message>
    <message>
        <source>Spread apart</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>S&amp;pread</source>
        <translation>É&amp;carter</translation>
    </message>
    <message>
        <source>Raise: how many pieces stand</source>
        <translation>Levage : combien de pièces sont posées</translation>
    </message>
    <message>
        <source>&amp;Raise</source>
        <translation>&amp;Levage</translation>
    </message>
    <message>
        <source>Play the raise</source>
        <translation>Jouer le levage</translation>
    </message>
    <message>
        <source>no section</source>
        <translation>sans coupe</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>depuis le sud</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>depuis l’est</translation>
    </message>
    <message>
        <source>from above</source>
        <translation>depuis le dessus</translation>
    </message>
    <message>
        <source>Section plane</source>
        <translation>Plan de coupe</translation>
    </message>
    <message>
        <source>S&amp;ection</source>
        <translation>Co&amp;upe</translation>
    </message>
    <message>
        <source>Place of the section</source>
        <translation>Place de la coupe</translation>
    </message>
    <message>
        <source>by wall</source>
        <translation>par mur</translation>
    </message>
    <message>
        <source>by finding</source>
        <translation>par constat</translation>
    </message>
    <message>
        <source>by equal pieces</source>
        <translation>par pièces égales</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation>C&amp;ouleur</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>&amp;Repères</translation>
    </message>
    <message>
        <source>by kept and new</source>
        <translation>par neuf et ancien</translation>
    </message>
</context>
<context>
    <name>NewShellDialog</name>
    <message>
        <source>New shell</source>
        <translation>Nouvelle coque</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rectangle</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>Inset porch</source>
        <translation>Porche rentrant</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Croix</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métrique</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation>pieds et pouces</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forme</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unités</translation>
    </message>
    <message>
        <source>&amp;Width, west to east</source>
        <translation>&amp;Largeur, d’ouest en est</translation>
    </message>
    <message>
        <source>&amp;Depth, south to north</source>
        <translation>&amp;Profondeur, du sud au nord</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Épaisseur</translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation>&amp;Rangs</translation>
    </message>
    <message>
        <source>&amp;Pitch</source>
        <translation>&amp;Pas</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>&amp;Jeu</translation>
    </message>
    <message>
        <source>&amp;Make it</source>
        <translation>La &amp;créer</translation>
    </message>
    <message>
        <source>What stays of the north side</source>
        <translation>Ce qui reste du côté nord</translation>
    </message>
    <message>
        <source>Width of the recess</source>
        <translation>Largeur du renfoncement</translation>
    </message>
    <message>
        <source>Width of the wing</source>
        <translation>Largeur de l’aile</translation>
    </message>
    <message>
        <source>Width of the court</source>
        <translation>Largeur de la cour</translation>
    </message>
    <message>
        <source>What stays of the east side</source>
        <translation>Ce qui reste du côté est</translation>
    </message>
    <message>
        <source>Depth of the recess</source>
        <translation>Profondeur du renfoncement</translation>
    </message>
    <message>
        <source>Depth of the wing</source>
        <translation>Profondeur de l’aile</translation>
    </message>
    <message>
        <source>How far the arms stand out</source>
        <translation>Saillie des bras</translation>
    </message>
    <message>
        <source>Depth of the court</source>
        <translation>Profondeur de la cour</translation>
    </message>
    <message>
        <source>From the left corner</source>
        <translation>Depuis l’angle gauche</translation>
    </message>
    <message>
        <source>A part must be smaller than the whole, and every size more than nothing.</source>
        <translation>Une partie doit être plus petite que le tout, et toute dimension plus grande que zéro.</translation>
    </message>
    <message>
        <source>%1 pieces in %2 rounds, %3 high</source>
        <translation>%1 pièces en %2 rangs, hauteur %3</translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>full dovetail, %1</source>
        <translation>queue d’aronde, %1</translation>
    </message>
    <message>
        <source>half dovetail, %1</source>
        <translation>demi-queue d’aronde, %1</translation>
    </message>
    <message>
        <source>square lap</source>
        <translation>mi-bois droit</translation>
    </message>
    <message>
        <source>stated: along %1, across %2</source>
        <translation>selon les pentes : en long %1, en travers %2</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Walls from above. Page Up and Page Down choose a wall, arrow keys move it.</source>
        <translation>Les murs vus d’en haut. Page haut et Page bas choisissent un mur, les flèches le déplacent.</translation>
    </message>
    <message>
        <source>Drag, or type the length of wall %1</source>
        <translation>Tirez, ou tapez la longueur du mur %1</translation>
    </message>
    <message>
        <source>Corner %1: %2</source>
        <translation>Angle %1 : %2</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Move wall</source>
        <translation>Déplacer le mur</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>entaille en selle</translation>
    </message>
    <message>
        <source>Drag, or type how far from the left of wall %1</source>
        <translation>Glisser, ou taper la distance depuis la gauche du mur %1</translation>
    </message>
    <message>
        <source>Move partition</source>
        <translation>Déplacer la cloison</translation>
    </message>
    <message>
        <source>Add partition</source>
        <translation>Ajouter une cloison</translation>
    </message>
    <message>
        <source>Remove partition</source>
        <translation>Ôter la cloison</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Drawing the cut sheets</source>
        <translation>Dessin des fiches de taille</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Cut sheets</source>
        <translation>Fiches de taille</translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>Cut sheet</source>
        <translation>Fiche de taille</translation>
    </message>
    <message>
        <source>The cut sheet of the chosen log. Page Up and Page Down turn its pages.</source>
        <translation>La fiche de taille de la pièce choisie. Page haut et Page bas tournent les pages.</translation>
    </message>
    <message>
        <source>Choose a log to see its cut sheet.</source>
        <translation>Choisissez une pièce pour voir sa fiche de taille.</translation>
    </message>
</context>
<context>
    <name>ShellPanel</name>
    <message>
        <source>full dovetail</source>
        <translation>queue d’aronde</translation>
    </message>
    <message>
        <source>half dovetail</source>
        <translation>demi-queue d’aronde</translation>
    </message>
    <message>
        <source>square lap</source>
        <translation>mi-bois droit</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>selon les pentes</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>staggered</source>
        <translation>décalé</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Épaisseur</translation>
    </message>
    <message>
        <source>Change thickness</source>
        <translation>Changer l’épaisseur</translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation>&amp;Rangs</translation>
    </message>
    <message>
        <source>&amp;Pitch</source>
        <translation>&amp;Pas</translation>
    </message>
    <message>
        <source>Change pitch</source>
        <translation>Changer le pas</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>&amp;Jeu</translation>
    </message>
    <message>
        <source>Change gap</source>
        <translation>Changer le jeu</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>T&amp;op</source>
        <translation>&amp;Haut</translation>
    </message>
    <message>
        <source>Notc&amp;h</source>
        <translation>&amp;Entaille</translation>
    </message>
    <message>
        <source>&amp;Slope</source>
        <translation>Pen&amp;te</translation>
    </message>
    <message>
        <source>O&amp;verhang</source>
        <translation>&amp;Débord</translation>
    </message>
    <message>
        <source>Change overhang</source>
        <translation>Changer le débord</translation>
    </message>
    <message>
        <source>&amp;Least tail</source>
        <translation>&amp;Moindre queue</translation>
    </message>
    <message>
        <source>Change least tail</source>
        <translation>Changer la moindre queue</translation>
    </message>
    <message>
        <source>&amp;Wood</source>
        <translation>&amp;Bois</translation>
    </message>
    <message>
        <source>Name shell</source>
        <translation>Nommer la coque</translation>
    </message>
    <message>
        <source>Change rounds</source>
        <translation>Changer les rangs</translation>
    </message>
    <message>
        <source>Change notch</source>
        <translation>Changer l’entaille</translation>
    </message>
    <message>
        <source>Change top</source>
        <translation>Changer le haut</translation>
    </message>
    <message>
        <source>Change wood</source>
        <translation>Changer le bois</translation>
    </message>
    <message>
        <source>Change slope</source>
        <translation>Changer la pente</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>One room of five rounds, for teaching</source>
        <translation>Une pièce de cinq rangs, pour enseigner</translation>
    </message>
    <message>
        <source>L-shaped house of thirteen rounds</source>
        <translation>Maison en L de treize rangs</translation>
    </message>
    <message>
        <source>Long house with an inset porch</source>
        <translation>Maison longue à porche rentrant</translation>
    </message>
    <message>
        <source>A shell of hewn logs, from the plan to the last peg</source>
        <translation>Une coque de pièces équarries, du plan à la dernière cheville</translation>
    </message>
    <message>
        <source>New shell</source>
        <translation>Nouvelle coque</translation>
    </message>
    <message>
        <source>From a shape, with sizes in metres or in feet and inches</source>
        <translation>À partir d’une forme, en mètres ou en pieds et pouces</translation>
    </message>
    <message>
        <source>Open a document</source>
        <translation>Ouvrir un document</translation>
    </message>
    <message>
        <source>Or drag one into the window</source>
        <translation>Ou en glisser un dans la fenêtre</translation>
    </message>
    <message>
        <source>A demo to look at and to change</source>
        <translation>Un exemple à regarder et à changer</translation>
    </message>
    <message>
        <source>&amp;Recent documents</source>
        <translation>Documents &amp;récents</translation>
    </message>
    <message>
        <source>Recent documents</source>
        <translation>Documents récents</translation>
    </message>
</context>
<context>
    <name>TextPanel</name>
    <message>
        <source>Text of the document</source>
        <translation>Texte du document</translation>
    </message>
    <message>
        <source>Edit text</source>
        <translation>Modifier le texte</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2 %3</translation>
    </message>
</context>
<context>
    <name>lists</name>
    <message>
        <source>piece</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>qty</source>
        <translation>qté</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>sorte</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>m3</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>ft3</source>
        <translation>pi³</translation>
    </message>
    <message>
        <source>kg from</source>
        <translation>kg de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>lb from</source>
        <translation>lb de</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>gros bout</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>raise</source>
        <translation>levage</translation>
    </message>
    <message>
        <source>left end</source>
        <translation>bout gauche</translation>
    </message>
    <message>
        <source>right end</source>
        <translation>bout droit</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diamètre</translation>
    </message>
    <message>
        <source>pegs</source>
        <translation>chevilles</translation>
    </message>
    <message>
        <source>least round</source>
        <translation>moindre rond</translation>
    </message>
    <message>
        <source>for</source>
        <translation>pour</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
</context>
</TS>
